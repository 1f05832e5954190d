// Why: what goes wrong with wiring, batteries, gas and alarms has words of its own: "open ground", "sulfated", "double tapped", "fault code".
// Trade usage (common practice, no source).
import type { State } from '../../catalogue/state.ts';

/** Aspect, state, phrases; `noun`: a thing of which there may be none ("no reverse polarity"). */
type Row = readonly [aspect: string, state: State, phrases: string, noun?: true];

const ages = ['five', 'six', 'seven', 'eight', 'ten', 'twelve', '5', '7', '10', '12'].flatMap((n) => [
  `past its ${n} years`,
  `past its ${n} year`,
  `past the ${n} year`,
  `past the ${n} years`,
  `past their ${n} years`,
  `beyond its ${n} years`,
  `over its ${n} years`,
]);
const swapped = ['reversed', 'swapped', 'switched', 'crossed', 'flipped', 'mixed up', 'backwards', 'reverse'];

export const powerFailures: readonly Row[] = [
  [
    'condition',
    'poor',
    'reverse polarity, reversed polarity, polarity reversed, polarity is reversed, polarity wrong, wrong polarity, hot neutral reverse, open ground, open neutral, open hot, missing ground, bootleg ground, hot skin, stray voltage, ' +
      swapped.flatMap((s) => ['', 'are ', 'is '].map((be) => `hot and neutral ${be}${s}`)).join(', '),
    true,
  ],
  [
    'condition',
    'poor',
    'bare wires, bare wire, exposed wires, exposed wiring, loose wires, loose wire, loose connection, loose connections, bad connection, bad connections, poor connection, bad splice, open splice, bad ground',
    true,
  ],
  [
    'condition',
    'poor',
    'miswired, wired wrong, wired backwards, wired backward, wired up wrong, ungrounded, not grounded, double tapped, doubled up, double lugged, wire nutted, twisted together, hacked in, homemade, home made, rat nest, rats nest, bird nest of wires, jumpered, jumped out',
  ],
  [
    'operates',
    'fails',
    'fault, faults, fault code, fault codes, fault light, fault lights, error, errors, error code, error codes, error message, error messages, low voltage alarm, overload light, overload',
    true,
  ],
  [
    'heat',
    'burnt',
    'heat mark, heat marks, scorch mark, scorch marks, burn mark, burn marks, hot spot, hot spots, melting, scorching, charring, browning, arcing, arc marks, heat damage, heat discoloration, sign of heat, signs of heat, sign of heating, signs of heating, sign of arcing, signs of arcing',
    true,
  ],
  [
    'strength',
    'weak',
    "won't hold a charge, wont hold a charge, doesn't hold a charge, don't hold a charge, not holding a charge, not holding charge, won't take a charge, wont take a charge, doesn't take a charge, not taking a charge, won't hold charge, not holding voltage, won't hold voltage, loses its charge, loses charge, lost its charge",
  ],
  [
    'operates',
    'fails',
    'dead cell, bad cell, shorted cell, weak cell, cell down, cell is down, sulfated, sulphated, sulfation, sulphation, open cell, low cell, dead cells, bad cells',
    true,
  ],
  [
    'age',
    'expired',
    `${ages.join(', ')}, out of cert, out of certification, needs recert, needs recertification, needs recertifying, needs requalifying, needs requalification, out of hydro, past recert, past its recert, lapsed`,
  ],
  [
    'smell',
    'smelling',
    'smell of gas, smells of gas, smell of propane, smells of propane, whiff of gas, whiff of propane, odor of gas, odor of propane, gas odor, propane odor, smell gas, smell propane, smells like gas, smells like propane, smelling gas, smelling propane, smelled gas, smelled propane, hint of gas, hint of propane, trace of gas, trace of propane',
    true,
  ],
  ['damage', 'scratched', 'nick, nicks, nicked', true],
  [
    'heat',
    'overheating',
    'hot to the touch, warm to the touch, too hot to touch, hot to touch, warm to touch, hot under load',
  ],
  [
    'operates',
    'fails',
    "never made a sound, never made a peep, never made a noise, didn't make a sound, didn't make a peep, didn't make a noise, doesn't make a sound, makes no sound, made no sound, made no noise, makes no noise, stayed silent, stays silent, is silent, stone silent, 's done, is done, are done, 're done",
  ],
];
