// Why: the recording drawn as a line, by station, with a mark wherever something was found.
import { type KeyboardEvent, type MouseEvent, useMemo } from 'react';
import { stationOf } from '../../../catalogue/index.ts';
import type { Finding } from '../../../judged/finding.ts';
import type { Verdict } from '../../../judged/rule.ts';
import { minutes as clock } from '../../words/minutes.ts';
import { verdictClass } from '../mark/verdict-mark.tsx';
import { usePlayer } from '../play/player.tsx';
import { useUnit } from '../unit/unit-context.ts';
import { useWidth } from './use-width.ts';

interface Mark {
  readonly second: number;
  readonly verdict: Verdict;
}

const marked: readonly Verdict[] = ['watch', 'repair', 'stop'];

/** Where in the recording each finding that is not sound was spoken; the worst are drawn last, so that they lie on top. */
function marksOf(findings: readonly Finding[]): readonly Mark[] {
  return findings
    .flatMap((f) => {
      const said = f.fact?.evidence.find((o) => o.source.from === 'speech');
      return said?.source.from === 'speech' && marked.includes(f.verdict)
        ? [{ second: said.source.start, verdict: f.verdict }]
        : [];
    })
    .sort((a, b) => marked.indexOf(a.verdict) - marked.indexOf(b.verdict));
}

export function WalkStrip({ go }: { go: (second: number) => void }) {
  const { packet } = useUnit();
  const { second } = usePlayer();
  const [ref, width] = useWidth<SVGSVGElement>(1000);
  const marks = useMemo(() => marksOf(packet.findings), [packet]);
  const end = Math.max(1, ...packet.chapters.map((c) => c.end));
  const x = (s: number): number => (s / end) * width;
  /** Too narrow for a name over every stretch: only the one the walk stands at is named. */
  const narrow = width < 560;
  const here = packet.chapters.findLast((c) => c.start <= second);

  const click = (e: MouseEvent<HTMLDivElement>): void => {
    const box = e.currentTarget.getBoundingClientRect();
    go(Math.max(0, Math.min(end, ((e.clientX - box.left) / box.width) * end)));
  };
  const key = (e: KeyboardEvent): void => {
    const step = { ArrowRight: 5, ArrowLeft: -5, PageUp: 60, PageDown: -60 }[e.key];
    if (step === undefined) return;
    e.preventDefault();
    go(Math.max(0, Math.min(end, second + step)));
  };
  return (
    <div
      className="walk-strip"
      role="slider"
      tabIndex={0}
      aria-label="The walk, by station"
      aria-valuemin={0}
      aria-valuemax={Math.round(end)}
      aria-valuenow={Math.round(second)}
      aria-valuetext={here ? `${clock(second)}, ${here.title}` : clock(second)}
      onClick={click}
      onKeyDown={key}
    >
      <svg ref={ref} viewBox={`0 0 ${width} 46`} aria-hidden="true">
        <path d={`M0 27h${width}`} stroke="var(--track)" strokeWidth="10" />
        {packet.chapters.map((c) => {
          const room = x(c.end) - x(c.start) - 6;
          const letters = Math.floor(room / 6.6);
          const name = stationOf(c.station)?.name ?? c.title;
          const short = name.length <= letters ? name : letters >= 5 ? `${name.slice(0, letters - 1)}…` : '';
          const title = narrow ? '' : short;
          return (
            <g key={`${c.start}-${c.station}`}>
              <path
                d={`M${x(c.start)} 27H${Math.max(x(c.start) + 1, x(c.end) - 3)}`}
                stroke="var(--ink)"
                strokeWidth="2"
              />
              <text x={x(c.start)} y="15">
                {title}
              </text>
            </g>
          );
        })}
        {narrow && here && (
          <text
            {...(x(second) < width / 2
              ? { x: Math.min(x(here.start), width - 190) }
              : { x: Math.min(width, Math.max(190, x(here.end))), textAnchor: 'end' })}
            y="15"
          >
            {stationOf(here.station)?.name ?? here.title}
          </text>
        )}
        {marks
          .filter((m) => !narrow || m.verdict !== 'watch')
          .map((m, i) => (
            <path
              // biome-ignore lint/suspicious/noArrayIndexKey: several may stand at one second, and none moves
              key={i}
              className={verdictClass(m.verdict)}
              d={`M${x(m.second)} 19v16`}
              stroke="currentColor"
              strokeWidth={(m.verdict === 'stop' ? 4 : 3) - (narrow ? 1 : 0)}
            />
          ))}
        <path d={`M${x(second)} 17v20`} stroke="var(--blue)" strokeWidth="2" />
        <text className="now" x={Math.min(Math.max(x(second), 18), width - 18)} y="45" textAnchor="middle">
          {clock(second)}
        </text>
      </svg>
    </div>
  );
}
