// Why: a photo carries where and when it was taken and by which phone; none of that may leave the building with it.
import sharp from 'sharp';

/** Longest side of a picture that is given out, in pixels. House default, no source: enough to see a crack, small enough to mail. */
export const longestSide = 1600;

/** Pictures above so many pixels are not opened: a file of a few kilobytes can claim to be as large as a street. */
const mostPixels = 120_000_000;

/**
 * The picture as a new JPEG: turned upright by its own mark, at most `side` pixels long, with nothing but its pixels: no place, no time, no
 * device, no thumbnail, no color profile. Undefined for bytes that are no picture: those stay in the building.
 */
export async function stripPhoto(
  bytes: Uint8Array,
  { side = longestSide, quality = 82 }: { readonly side?: number; readonly quality?: number } = {},
): Promise<Uint8Array | undefined> {
  try {
    // Metadata is left out unless asked for; the pixels are converted to sRGB, so that the profile is not missed.
    const made = await sharp(bytes, { limitInputPixels: mostPixels, failOn: 'error' })
      .rotate()
      .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .jpeg({ quality })
      .toBuffer();
    return new Uint8Array(made);
  } catch {
    // Not a picture, or a damaged one: whatever it holds cannot be shown to be clean.
    return undefined;
  }
}
