// Why: recognisers write anything; a seeded stream of broken transcripts shows that hearing neither throws nor loses a cue.
import { hear } from '../../src/said/hear/hear.ts';
import { readTranscript } from '../../src/said/transcript/read-transcript.ts';

/** A small seeded generator (xorshift, Marsaglia 2003): the same seed gives the same stream. */
export function dice(seed: number): (below: number) => number {
  let s = seed >>> 0 || 1;
  return (below) => {
    s ^= s << 13;
    s >>>= 0;
    s ^= s >>> 17;
    s ^= s << 5;
    s >>>= 0;
    return s % below;
  };
}

const thrown = (
  "no not never without wait scratch that strike make it that one the other no-one's 1/0 1/32 9/32 0x1F -3 1e309 NaN ½ ¾ 12'6\" $5 $ % ° # 00:00 --> <v Bob> </v> <b> & &amp; constructor __proto__ toString " +
  'hundred thousand million and a half point oh oh five to six plus or minus about psi volts inches thirty-seconds by of both all each left right front rear inner outer driver passenger bay leg ' +
  'twenty twenty-three nineteen date code VIN 1HGCM82633A004352 zero zero eight é 漢字 🚐 \u0000 \u200b \ufeff ' +
  '… … - -- — . , ; : ? ! ... ??? ’s it works leaks doesn’t'
).split(' ');

/** Words taken from the transcripts themselves and from the list above, put where they do not belong. */
function spoil(words: string[], roll: (below: number) => number, vocabulary: readonly string[]): void {
  const at = roll(Math.max(1, words.length));
  const pick = (): string =>
    (roll(3) === 0 ? thrown[roll(thrown.length)] : vocabulary[roll(vocabulary.length)]) ?? '';
  const word = words[at] ?? '';
  switch (roll(12)) {
    case 0:
      words.splice(at, 1);
      break;
    case 1:
      words.splice(at, 0, pick());
      break;
    case 2:
      words[at] = pick();
      break;
    case 3:
      words.splice(at, 0, word);
      break;
    case 4:
      words[at] = word.slice(0, roll(word.length + 1)) + pick();
      break;
    case 5:
      words[at] = word.replace(/[.,?!]$/, '');
      break;
    case 6:
      words[at] = `${word}${'.,?!;:-'[roll(7)] ?? ''}`;
      break;
    case 7:
      words[at] = roll(2) === 0 ? word.toUpperCase() : word.toLowerCase();
      break;
    case 8: {
      const other = roll(Math.max(1, words.length));
      words[at] = words[other] ?? '';
      words[other] = word;
      break;
    }
    case 9:
      words.splice(at, roll(6));
      break;
    case 10:
      words.splice(at, 0, ...Array.from({ length: roll(5) }, pick));
      break;
    default:
      words[at] = [...word].reverse().join('');
  }
}

/** One broken transcript: some dozen words of real talk with up to eight wounds, in cues with odd times. */
export function brokenTranscript(roll: (below: number) => number, talk: readonly string[]): string {
  const from = roll(Math.max(1, talk.length - 60));
  const words = talk.slice(from, from + 12 + roll(48));
  for (let n = 1 + roll(8); n > 0; n--) spoil(words, roll, talk);
  let t = roll(5000) / 10;
  const clock = (s: number): string => {
    const two = (x: number): string => String(Math.floor(x)).padStart(2, '0');
    return `${two(s / 3600)}:${two((s / 60) % 60)}:${(s % 60).toFixed(3).padStart(6, '0')}`;
  };
  let out = roll(20) === 0 ? '' : 'WEBVTT\n\n';
  for (let i = 0; i < words.length; ) {
    const many = 1 + roll(14);
    const end = t + roll(60) / 10;
    const times = roll(25) === 0 ? [end, t] : [t, end];
    out += `${clock(times[0] ?? 0)} --> ${roll(60) === 0 ? 'later' : clock(times[1] ?? 0)}\n${words.slice(i, i + many).join(' ')}\n${roll(15) === 0 ? '' : '\n'}`;
    t = end + (roll(10) === 0 ? roll(200) / 10 : 0);
    i += many;
  }
  return out;
}

/** What is wrong with the hearing of a transcript, in words; undefined where every law holds. */
export function hearingFault(text: string): string | undefined {
  const read = readTranscript('broken.vtt', text);
  const heard = hear(read.cues);
  const counts = new Uint8Array(read.cues.length);
  for (const i of [...heard.used, ...heard.unused]) counts[i] = (counts[i] ?? 0) + 1;
  if (counts.some((n) => n !== 1)) return 'a cue is neither used nor unused, or both';
  const end = read.cues.reduce((most, c) => Math.max(most, c.start, c.end), 0);
  for (const o of heard.observations) {
    if (!(o.start >= 0 && o.start <= end && o.end >= o.start)) return `time ${o.start} to ${o.end} of ${end}`;
    if (!(o.sure > 0 && o.sure < 1)) return `sure ${o.sure}`;
    if (o.words.trim() === '') return `no words behind ${o.part}/${o.aspect}`;
    if (o.value.is === 'quantity' && !Number.isFinite(o.value.value)) return `value ${o.value.value}`;
    for (const c of o.corrects ?? []) if (!heard.observations[c]) return `corrects ${c}, which is not there`;
  }
  return undefined;
}
