// Why: "light checking" and "black smoke" name no lamp and no tank, and a stain over a bed is the ceiling's: what stands beside a word decides.
import type { Word } from './word.ts';
import { wordTable } from './word-table.ts';

/** Words that name no part right before one of these. */
export const unlessNext: Readonly<Record<string, RegExp>> = wordTable({
  belt: /^(?:high|line|level|buckle)$/,
  // "light checking", "black smoke": how strong, what colour
  light:
    /^(?:checking|cracking|rust|rusting|scratch|scratches|scratching|scuffs|oxidation|oxidization|haze|hazing|wear|weep|weeping|seep|seepage|seeping|film|pitting|corrosion|mildew|staining|stains|chalking|chalk|fading|crazing|scale|dusting|dust|surface|weathering|moisture|condensation|leak|leakage|smoke|vibration|shake|shimmy|rain|drizzle|traffic|load|throttle|pedal|braking|tap|touch|duty|blue|brown|gray|grey|oak|wood|colored)$/,
  black:
    /^(?:smoke|soot|mold|mould|mildew|streak|streaks|stuff|oil|spot|spots|mark|marks|specks|dust|gunk|residue|plastic|trim|rubber|paint|leather|sludge|stains?|film)$/,
  gray: /^(?:smoke|haze|primer|paint|trim|carpet|leather|film|dust|stuff)$/,
  grey: /^(?:smoke|haze|primer|paint|trim|carpet|leather|film|dust|stuff)$/,
});
/** "There's a ring above the dinette": a mark, and over what inside. */
export function stainedOver(words: readonly Word[], i: number): boolean {
  if (
    !/^(?:bed|beds|bunk|bunks|dinette|sofa|couch|toilet|shower|stove|table|mattress|recliner|recliners)$/.test(
      words[i]?.norm ?? '',
    )
  )
    return false;
  let k = i - 1;
  while (
    k > i - 5 &&
    /^(?:the|a|an|this|that|your|my|our|front|rear|main|queen|king|bunk|lower|upper)$/.test(
      words[k]?.norm ?? '',
    )
  )
    k--;
  if (!/^(?:over|above)$/.test(words[k]?.norm ?? '')) return false;
  const marks =
    /^(?:stain|stains|ring|rings|watermark|drip|drips|bubble|discoloration|mark|marks|spot|spots)$/;
  for (let b = k - 1; b >= 0 && k - b < 5 && words[b]?.stop === 0; b--) {
    if (marks.test(words[b]?.norm ?? '')) {
      // "a stain on the wall over the bed": what has the stain is named
      return !words.slice(b + 1, k).some((w) => /^(?:on|in|at)$/.test(w.norm));
    }
  }
  return false;
}
