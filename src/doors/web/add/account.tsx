// Why: what was understood of the files and what was not, so that nobody believes more was heard than was.
import type { AccountLine } from '../../wire/api.ts';

const groups: readonly { readonly did: AccountLine['did']; readonly head: string }[] = [
  { did: 'refused', head: 'Not understood' },
  { did: 'partly', head: 'Understood in part' },
  { did: 'understood', head: 'Understood' },
  { did: 'kept', head: 'Kept, but nothing was read from it' },
  { did: 'missing', head: 'Not there, so not known' },
];

export function Account({ lines }: { lines: readonly AccountLine[] }) {
  return (
    <section aria-label="What came of the files">
      {groups.map(({ did, head }) => {
        const these = lines.filter((l) => l.did === did);
        if (these.length === 0) return null;
        return (
          <div key={did}>
            <h3>
              {head} <span className="num soft">{these.length}</span>
            </h3>
            <ul className="lines">
              {these.map((l) => (
                <li key={`${l.file}${l.line}${l.says}`} style={{ padding: '8px 0' }}>
                  <strong>{l.file}</strong>
                  {l.line ? <span className="soft">, line {l.line}</span> : ''}
                  <br />
                  <span className="small">{l.says}</span>
                </li>
              ))}
            </ul>
          </div>
        );
      })}
    </section>
  );
}
