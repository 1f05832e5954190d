// Why: the typefaces come from the registry packed for browsers (WOFF 1.0, W3C); the PDF maker wants them unpacked.
import { unzlibSync } from 'fflate';

const aligned = (n: number): number => (n + 3) & ~3;

/** The TrueType or OpenType font inside a WOFF 1.0 file. Throws RangeError when the bytes are not one. */
export function unpackWoff(woff: Uint8Array): Uint8Array {
  const from = new DataView(woff.buffer, woff.byteOffset, woff.byteLength);
  if (woff.byteLength < 44 || from.getUint32(0) !== 0x774f4646)
    throw new RangeError('unpackWoff: not a WOFF 1.0 file');
  const count = from.getUint16(12);
  const tables = Array.from({ length: count }, (_, i) => {
    const at = 44 + i * 20;
    const [offset, packed, size] = [from.getUint32(at + 4), from.getUint32(at + 8), from.getUint32(at + 12)];
    const raw = woff.subarray(offset, offset + packed);
    return {
      tag: from.getUint32(at),
      sum: from.getUint32(at + 16),
      bytes: packed < size ? unzlibSync(raw) : raw,
    };
  });
  const out = new Uint8Array(tables.reduce((n, t) => n + aligned(t.bytes.length), 12 + count * 16));
  const to = new DataView(out.buffer);
  const power = 2 ** Math.floor(Math.log2(Math.max(1, count)));
  to.setUint32(0, from.getUint32(4));
  [count, power * 16, Math.log2(power), count * 16 - power * 16].forEach((n, i) => {
    to.setUint16(4 + i * 2, n);
  });
  let at = 12 + count * 16;
  tables.forEach((t, i) => {
    [t.tag, t.sum, at, t.bytes.length].forEach((n, k) => {
      to.setUint32(12 + i * 16 + k * 4, n);
    });
    out.set(t.bytes, at);
    at += aligned(t.bytes.length);
  });
  return out;
}
