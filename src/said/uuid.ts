// Why: an id is made where a thing is observed, sorts by time, and can be made again from the same words.

const hex = (n: number): string => n.toString(16).padStart(2, '0');

/**
 * A UUID version 7 (RFC 9562, section 5.7).
 * @param milliseconds since 1970-01-01, 48 bits
 * @param random at least 10 bytes; random for something new, a hash where the same input must give the same id again
 */
export function uuidV7(milliseconds: number, random: ArrayLike<number>): string {
  if (random.length < 10) throw new RangeError('uuidV7: needs 10 bytes');
  const time = Math.max(0, Math.floor(milliseconds)).toString(16).padStart(12, '0').slice(-12);
  const b = Array.from({ length: 10 }, (_, i) => (random[i] ?? 0) & 0xff);
  const a = hex(0x70 | (b[0]! & 0x0f)) + hex(b[1]!);
  const c = hex(0x80 | (b[2]! & 0x3f)) + hex(b[3]!);
  return `${time.slice(0, 8)}-${time.slice(8)}-${a}-${c}-${b.slice(4).map(hex).join('')}`;
}
