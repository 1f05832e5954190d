// Why: a tire's date code is four digits that few buyers can read: week and year, made plain.

/**
 * "2319" or "...2319" -> "week 23 of 2019". Undefined where the text does not end in a four-digit week and year: a code of three
 * digits is from before 2000 and does not name its decade, so nothing is made of it here.
 */
export function plainWeek(code: string): string | undefined {
  const m = /(?:^|\D)(\d{2})(\d{2})$/.exec(code.trim());
  if (!m) return undefined;
  const week = Number(m[1]);
  return week >= 1 && week <= 53 ? `week ${week} of 20${m[2]}` : undefined;
}
