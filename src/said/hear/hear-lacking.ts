// Why: "it's got no knob on it", "there's no lid" beside a thing named, and heaters that blow cold: a piece or an effect that should be there and is not.
// Trade usage (common practice, no source).
import type { Clause, Draft } from './clause.ts';
import { draftOf } from './state-draft.ts';
import type { Talk } from './talk.ts';

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));
/** Pieces of things, none of them a part by itself. */
const pieces = set(
  'knob knobs lid lids handle handles cover covers cap caps face faceplate screen screens bulb bulbs latch latches pull pulls hinge hinges glass lens lenses buckle buckles strap straps cushion cushions pad pads mattress remote remotes screw screws bolt bolts trim bezel shade shades rod rods shelf shelves cord cords string strings stopper plug gasket filter grille grill vent register button buttons switch battery batteries bracket brackets mount leg legs arm arms strut struts rod rack racks tray trays turntable plate drawer drawers door doors hook hooks clip clips pin pins nut nuts wheel wheels foot feet chain chains hose hoses fuse fuses blade blades insulation mat mats curtain liner valance tassel wand crank key keys lock locks catch catches panel panels',
);
const has = /^(?:got|has|have|had|with|is|are|'s|there's)$/;
const ends = /^(?:on|to|in|for|left|at|anymore|and|but|either|anywhere|whatsoever|now)$/;
const heats =
  /^(?:furnace_run|furnace_out|water_heater_\w+|floor_heat|hydronic_unit|fireplace|oven|driver_seat|passenger_seat)$/;
const blows = /^(?:blow|blows|blowing|blew|puts|pushes|throws|gives|runs|stays|comes|only)$/;

/** Pieces that are gone and heat that is none, in a clause. */
export function hearLacking(talk: Talk, clause: Clause, taken: Uint8Array): Draft[] {
  const out: Draft[] = [];
  const { words } = talk.marks;
  const norm = (k: number): string => (k >= clause.from && k < clause.to ? (words[k]?.norm ?? '') : '');
  for (let i = clause.from; i < clause.to; i++) {
    if (taken[i] || talk.scopes.elsewhere[i]) continue;
    const n = norm(i);
    if (n === 'no' && has.test(norm(i - 1)) && words[i]?.stop === 0) {
      const noun = pieces.has(norm(i + 1))
        ? i + 1
        : pieces.has(norm(i + 2)) && words[i + 1]?.stop === 0
          ? i + 2
          : -1;
      const next = norm(noun + 1);
      const closes = noun >= 0 && (next === '' || (words[noun]?.stop ?? 0) > 0 || ends.test(next));
      const subject = clause.mentions.filter((m) => !m.aside && m.to < i && i - m.to <= 3).at(-1);
      const part = subject?.parts[0];
      if (closes && part && part !== 'coach' && !/^(?:there|it)$/.test(norm(i - 2))) {
        out.push(
          draftOf(
            talk,
            clause,
            taken,
            { part, aspect: 'missing', state: 'missing', sense: 'defect', polarity: 'bad', weight: 0.72 },
            i,
            noun + 1 - i,
          ),
        );
        continue;
      }
    }
    if (n === 'cold' && (blows.test(norm(i - 1)) || (norm(i - 1) === 'out' && blows.test(norm(i - 2))))) {
      const part = talk.partsFor(i, i + 1, clause)[0];
      if (part && heats.test(part) && talk.isClose(part, i, clause)) {
        out.push(
          draftOf(
            talk,
            clause,
            taken,
            { part, aspect: 'operates', state: 'fails', sense: 'defect', polarity: 'bad', weight: 0.75 },
            i - 1,
            2,
          ),
        );
      }
    }
  }
  return out;
}
