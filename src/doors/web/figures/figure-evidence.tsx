// Why: a figure explains itself: what went in and where that came from, the working, the formula, its author, what it leaves out.

import { Link } from 'wouter';
import { aspectOf } from '../../../catalogue/index.ts';
import { placeName } from '../../../catalogue/place.ts';
import type { Figure, Need } from '../../../figured/figure.ts';
import { shownValue } from '../../../figured/shown-value.ts';
import { sayGap } from '../../words/say-gap.ts';
import { sayCitation } from '../../words/say-limit.ts';
import { sayValue } from '../../words/say-value.ts';
import { useUnit } from '../unit/unit-context.ts';
import { FigureInput } from './figure-input.tsx';
import { sayRange } from './say-range.ts';

export function FigureEvidence({ figure: f }: { figure: Figure }) {
  const { unit } = useUnit();
  const { card, result } = f;
  const shown = shownValue(f);
  const range = result.is === 'worked' ? sayRange(shown ?? result.value) : undefined;
  const needOf = (name: string): Need | undefined => card.needs.find((n) => n.name === name);
  const drivers = f.drivenBy.filter((d) => d.share >= 0.01).slice(0, 5);
  const missing = result.is === 'gap' ? result.missing.filter((n) => aspectOf(n.part, n.aspect)) : [];
  return (
    <div className="evidence">
      <p className="kicker">how it was worked out</p>
      <h2>
        {card.asks}
        {f.place && <span className="soft"> {placeName(f.place)}</span>}
      </h2>
      {result.is === 'worked' ? (
        <>
          <p className="reading">{sayValue(shown ?? result.value, card.gives.part, card.gives.aspect)}</p>
          {range && <p>{range}.</p>}
          {result.binds && <p>What binds: {result.binds}.</p>}
          {result.note && <p>{result.note}</p>}
        </>
      ) : (
        <>
          <p>{sayGap(f)}</p>
          <div className="row">
            {missing.map((n) => (
              <Link
                key={n.name}
                className="button"
                href={`/unit/${unit}/add?${new URLSearchParams({ part: n.part, aspect: n.aspect, ...(f.place ? { place: f.place } : {}) })}`}
              >
                Write down: {n.what}
              </Link>
            ))}
          </div>
        </>
      )}
      {f.inputs.length > 0 && (
        <>
          <h3>What went in</h3>
          <ul className="lines">
            {f.inputs.map((i) => (
              <FigureInput key={i.need.name} need={i.need} given={i.given} />
            ))}
          </ul>
        </>
      )}
      {result.is === 'worked' && result.working.length > 0 && (
        <>
          <h3>The working</h3>
          <ol className="working">
            {result.working.map((w) => (
              <li key={w}>{w}</li>
            ))}
          </ol>
        </>
      )}
      {drivers.length > 0 && (
        <>
          <h3>What would make it surer</h3>
          <div className="bars">
            {drivers.map((d) => (
              <div key={d.name} style={{ display: 'contents' }}>
                <span>{needOf(d.name)?.what ?? 'the method itself'}</span>
                <span aria-hidden="true">
                  <i style={{ width: `${Math.max(2, d.share * 100)}%` }} />
                </span>
                <span className="num">{Math.round(d.share * 100)} %</span>
              </div>
            ))}
          </div>
          <p className="small soft">Shares of the doubt: measure the longest one better first.</p>
        </>
      )}
      <h3>Formula</h3>
      <p className="formula">{card.formula}</p>
      <h3>Who says so</h3>
      {card.cites.map((c) => (
        <p key={`${c.source.id}${c.clause}`} className="small soft">
          {sayCitation(c)}. {c.source.scope}
        </p>
      ))}
      <h3>What it leaves out</h3>
      <p className="small soft">{card.neglects}</p>
      <p className="small soft">Checked against: {card.checkedAgainst}</p>
    </div>
  );
}
