// Why: how near the limit, in plain words, for the margin beside a finding.
export { plainNear as sayNear } from '../../published/plain-near.ts';
