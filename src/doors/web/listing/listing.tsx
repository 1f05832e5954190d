// Why: the listing as a buyer will read it, each sentence tied to what backs it; and the button that gives it out.
import { useMemo } from 'react';
import type { Claim } from '../../../published/document.ts';
import { Sheet } from '../margin/sheet.tsx';
import { useChosen } from '../margin/use-chosen.ts';
import { useNarrow } from '../margin/use-narrow.ts';
import { useUnit } from '../unit/unit-context.ts';
import { ClaimEvidence } from './claim-evidence.tsx';
import { ClaimLine } from './claim-line.tsx';
import { Publish } from './publish.tsx';

const sections: readonly { readonly is: Claim['section']; readonly head: string }[] = [
  { is: 'headline', head: 'In short' },
  { is: 'identity', head: 'What it is' },
  { is: 'chassis', head: 'What drives it' },
  { is: 'house', head: 'Living in it' },
  { is: 'disclosure', head: 'What is wrong with it' },
  { is: 'not checked', head: 'What nobody has checked' },
  { is: 'money', head: 'The price' },
  { is: 'praise', head: 'What was said in praise' },
];

export function Listing() {
  const { packet } = useUnit();
  const [chosenId, choose] = useChosen();
  const narrow = useNarrow();
  const { listing } = packet;
  const chosen = listing.claims.find((c) => c.id === chosenId);
  const groups = useMemo(
    () =>
      sections
        .map((s) => ({ ...s, claims: listing.claims.filter((c) => c.section === s.is) }))
        .filter((s) => s.claims.length > 0),
    [listing],
  );
  const count = (standing: Claim['standing']) => listing.claims.filter((c) => c.standing === standing).length;
  return (
    <Sheet
      margin={
        chosen ? (
          <ClaimEvidence key={chosen.id} claim={chosen} />
        ) : (
          <p className="soft">Choose a sentence: what backs it, or why nothing does, stands here.</p>
        )
      }
    >
      <Publish />
      <p className="small soft">
        {count('backed')} sentences are backed, {count('unbacked')} are not, {count('contradicted')} are
        contradicted. What is struck through does not go out.
      </p>
      <article className="listing">
        <h2 className="title" style={{ border: 0 }}>
          {listing.title}
        </h2>
        {groups.map(({ is, head, claims }) => (
          <section key={is} aria-label={head}>
            <h2>{head}</h2>
            {claims.map((c) => (
              <div key={c.id}>
                <ClaimLine claim={c} chosen={c.id === chosenId} onChoose={() => choose(c.id)} />
                {narrow && c.id === chosenId && (
                  <div className="under-line">
                    <ClaimEvidence claim={c} />
                  </div>
                )}
              </div>
            ))}
          </section>
        ))}
      </article>
    </Sheet>
  );
}
