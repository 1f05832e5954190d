// Why: "the bottom feet are good", "edges are tight": a piece that every part has is said of the part talked about.
// Plain English (common practice, no source).
import type { Word } from './word.ts';

const set = (text: string): ReadonlySet<string> => new Set(text.split(' '));
/** Nouns that are a place on a thing or a piece of it. */
const pieces = set(
  'top tops bottom bottoms edge edges end ends side sides middle center corner corners face faces back front inside outside rim lip lips foot feet leg legs arm arms frame frames bracket brackets hinge hinges latch latches lock locks handle handles knob knobs catch spring springs strut struts cable cables chain chains clip clips pin pins hook hooks bolt bolts screw screws rivet rivets fastener fasteners weld welds seam seams joint joints stitching stitches hem hems cord cords strap straps roller rollers tube track tracks rail rails channel channels gear gears motor motors switch switches button buttons bulb bulbs lens lenses housing housings case cover covers lid lids cap caps flap flaps gasket gaskets seal seals rubber glass pane panes mesh cloth fabric canvas vinyl material skin surface finish color wood plywood metal aluminum plastic foam insulation wiring wires connector connectors terminals pad pads plate plates panel panels base mount mounts post posts rung rungs step steps tread treads tape caulk bead beads crank blades blade dome domes body inner outer upper lower',
);
const articles = set('the a its their his her all both each every your my these those that this');
const adjectives = set(
  'other two three four front rear back left right top bottom upper lower inner outer main little big old new whole inside outside actual metal plastic rubber side end very',
);
const be = /^(?:is|are|'s|'re|was|were|looks|look|feels|feel|seems|seem|stays|stay|sits|sit)$/;

/** True where words `from`..`to` are no more than such a piece and a verb of being. */
export function isPieceSubject(words: readonly Word[], from: number, to: number): boolean {
  let k = from;
  if (articles.has(words[k]?.norm ?? '')) k++;
  let noun = -1;
  for (; k < to && k - from < 5; k++) {
    const n = words[k]?.norm ?? '';
    if (be.test(n)) break;
    if (pieces.has(n)) noun = k;
    else if (!adjectives.has(n)) return false;
  }
  return noun >= 0 && noun === k - 1 && k < to && be.test(words[k]?.norm ?? '') && to - k <= 4;
}
