// Why: that a buyer cannot read the yard's position out of a picture is a promise; here it is held against a picture that carries one.
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { stripPhoto } from './strip-photo.ts';

/** 300 by 200, black on the left, with a position, a phone, a time, and a mark to turn it a quarter. */
const taken = (): Promise<Buffer> =>
  sharp({ create: { width: 300, height: 200, channels: 3, background: '#ffffff' } })
    .composite([
      {
        input: { create: { width: 150, height: 200, channels: 3, background: '#000000' } },
        left: 0,
        top: 0,
      },
    ])
    .withExif({
      IFD0: { Make: 'InventedPhone', Artist: 'R. Ames' },
      IFD2: { DateTimeOriginal: '2026:11:24 09:15:00' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '33/1 26/1 5310/100',
        GPSLongitudeRef: 'W',
        GPSLongitude: '112/1 4/1 2680/100',
      },
    })
    .withMetadata({ orientation: 6 })
    .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"><!-- InventedPlace --></x:xmpmeta>')
    .jpeg()
    .toBuffer();

describe('a photo that leaves the building', () => {
  test('carries no position, phone, name or time', async () => {
    const before = await taken();
    const had = await sharp(before).metadata();
    expect(had.exif?.toString('latin1')).toMatch(/InventedPhone/);
    expect(had.orientation).toBe(6);
    expect(before.toString('latin1')).toMatch(/InventedPlace/);

    const after = Buffer.from((await stripPhoto(before))!);
    const has = await sharp(after).metadata();
    expect([has.exif, has.xmp, has.iptc, has.icc, has.orientation, has.comments]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
    expect(after.toString('latin1')).not.toMatch(/Exif|GPS|InventedPhone|InventedPlace|Ames|2026/);
    // Nothing but what a JPEG needs: no application segment besides JFIF's own, no comment.
    for (let at = 2; after[at] === 0xff && after[at + 1] !== 0xda; at += 2 + after.readUInt16BE(at + 2))
      expect([0xe0, 0xdb, 0xc0, 0xc2, 0xc4, 0xdd]).toContain(after[at + 1]);
  });
  test('stands upright', async () => {
    const { data, info } = await sharp(await stripPhoto(await taken()))
      .raw()
      .toBuffer({ resolveWithObject: true });
    expect([info.width, info.height]).toEqual([200, 300]);
    // Turned a quarter clockwise, what was left is up.
    expect(data[(10 * 200 + 100) * info.channels]).toBeLessThan(40);
    expect(data[(290 * 200 + 100) * info.channels]).toBeGreaterThan(215);
  });
  test('is at most 1600 pixels long, and never made larger', async () => {
    const large = await sharp({ create: { width: 4000, height: 3000, channels: 3, background: '#777' } })
      .png()
      .toBuffer();
    expect(await sharp(await stripPhoto(large)).metadata()).toMatchObject({
      format: 'jpeg',
      width: 1600,
      height: 1200,
    });
    expect(await sharp(await stripPhoto(await taken())).metadata()).toMatchObject({ height: 300 });
  });
  test('the same picture gives the same bytes; what is no picture stays in the building', async () => {
    const picture = await taken();
    expect(Buffer.compare((await stripPhoto(picture))!, (await stripPhoto(picture))!)).toBe(0);
    expect(await stripPhoto(new TextEncoder().encode('GPS 33.44 N'))).toBeUndefined();
    expect(await stripPhoto(picture.subarray(0, 400))).toBeUndefined();
  });
});
