// Why: a sentence of the listing with its standing beside it, by word and mark.
import type { Claim } from '../../../published/document.ts';
import { StandingMark } from '../mark/standing-mark.tsx';

interface Props {
  readonly claim: Claim;
  readonly chosen: boolean;
  readonly onChoose: () => void;
}

export function ClaimLine({ claim: c, chosen, onChoose }: Props) {
  return (
    <button
      type="button"
      className="claim"
      aria-expanded={chosen}
      data-published={c.published}
      onClick={onChoose}
    >
      <StandingMark standing={c.standing} />
      <span className="sentence">
        {c.text}
        {!c.published && <span className="unseen"> (does not go out)</span>}
      </span>
    </button>
  );
}
