import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PICTURE_LIMITS } from '../../src/reading/limits.js';
import { openImage } from '../../src/reading/open-image.js';
import { chainTiffs, fromGrey, multiPageTiff, pattern, pngHeaderOnly, type Grey } from '../faults/inputs/pictures.js';

const LABEL = pattern(406, 609);

describe('open-image: bad input gets one reason', () => {
  const whole = (): Promise<Buffer> => fromGrey(LABEL).jpeg().toBuffer();
  const cut = (bytes: Buffer, share: number): Buffer => bytes.subarray(0, Math.floor(bytes.length * share));
  const noisy: Grey = { width: 300, height: 300, data: Uint8Array.from({ length: 90_000 }, (_, i) => (i * i * 31 + (i >> 3) * 17) % 256) };
  const cases: Record<string, [string, () => Promise<Uint8Array>]> = {
    empty: ['reading/picture-damaged', async () => new Uint8Array()],
    'one byte': ['reading/picture-damaged', async () => new Uint8Array([0x89])],
    'not a picture': ['reading/picture-damaged', async () => Buffer.from('<html><body>please sign in</body></html>')],
    'a PNG cut off in its header': ['reading/picture-damaged', async () => (await fromGrey(noisy).png().toBuffer()).subarray(0, 30)],
    'a PNG cut off in the middle': ['reading/picture-damaged', async () => cut(await fromGrey(noisy).png().toBuffer(), 0.6)],
    'a JPEG cut off in the middle': ['reading/picture-damaged', async () => cut(await fromGrey(noisy).jpeg().toBuffer(), 0.6)],
    'a JPEG cut off in its header': ['reading/picture-damaged', async () => (await whole()).subarray(0, 100)],
    'a GIF cut off in the middle': ['reading/picture-damaged', async () => cut(await fromGrey(noisy).gif().toBuffer(), 0.6)],
    'a WebP cut off in the middle': [
      'reading/picture-damaged',
      async () => cut(await fromGrey(noisy).webp({ lossless: true }).toBuffer(), 0.6),
    ],
    'a TIFF cut off in the middle': [
      'reading/picture-damaged',
      async () => cut(await fromGrey(noisy).tiff({ compression: 'lzw' }).toBuffer(), 0.6),
    ],
    'a PNG that says 20000×20000': ['reading/picture-too-large', async () => pngHeaderOnly(20_000, 20_000)],
    'an SVG': ['reading/picture-kind', async () => Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')],
    'a TIFF of too many pages': [
      'reading/picture-too-many-pages',
      () => multiPageTiff([pattern(40, 40), pattern(40, 40), pattern(40, 40)], 203),
    ],
  };
  it.each(Object.entries(cases))('%s', async (_name, [code, draw]) => {
    const result = await openImage(await draw(), { ...PICTURE_LIMITS, pages: 2 });
    if (!('refused' in result)) throw new Error('must be refused');
    expect(result.refused.code).toBe(code);
    expect(result.refused.message).not.toContain('\n');
    expect(result.refused.remedy).toMatch(/^[A-Z].*\.$/);
  });

  it('refuses a document that would fill the memory, and says at which page', async () => {
    const bytes = await multiPageTiff([LABEL, LABEL, LABEL], 203);
    const result = await openImage(bytes, { ...PICTURE_LIMITS, keptBytes: 250_000, storedBytes: 250_500 });
    if (!('refused' in result)) throw new Error('must be refused');
    expect(result.refused.code).toBe('reading/picture-too-large');
    expect(result.refused.message).toContain('of 3 pages');
  });

  it('opens or refuses pictures with some of their bytes changed, and throws for none', { timeout: 60_000 }, async () => {
    const { data, width, height } = pattern(101, 152);
    const pictures = await Promise.all([
      fromGrey({ data, width, height }).png().toBuffer(),
      fromGrey({ data, width, height }).jpeg().toBuffer(),
      fromGrey({ data, width, height }).jpeg({ progressive: true }).toBuffer(),
      fromGrey({ data, width, height }).webp().toBuffer(),
      fromGrey({ data, width, height }).gif().toBuffer(),
      fromGrey({ data, width, height }).tiff({ compression: 'lzw' }).toBuffer(),
    ]);
    const ends = new Set<string>();
    const change = fc.record({ at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), to: fc.nat(255) });
    const some = fc.record({
      which: fc.nat(pictures.length - 1),
      head: fc.boolean(),
      changes: fc.array(change, { minLength: 1, maxLength: 12 }),
    });
    await fc.assert(
      fc.asyncProperty(some, async ({ which, head, changes }) => {
        const bytes = Buffer.from(pictures[which] ?? []);
        const reach = head ? Math.min(400, bytes.length) : bytes.length;
        for (const { at, to } of changes) bytes[Math.floor(at * reach)] = to;
        const result = await openImage(bytes);
        ends.add('refused' in result ? result.refused.code : 'opened');
        if (!('refused' in result)) result.close();
      }),
      { numRuns: 400 },
    );
    expect([...ends]).toEqual(expect.arrayContaining(['opened', 'reading/picture-damaged']));
  });

  it('names the damaged page of a TIFF', async () => {
    const pages = await Promise.all([noisy, noisy].map((page) => fromGrey(page).tiff({ compression: 'lzw' }).toBuffer()));
    const bytes = Buffer.from(chainTiffs(pages));
    // Strips stand before the directory: the second page's compressed samples become nonsense, its header stays whole.
    const second = (pages[0]?.length ?? 0) + 8;
    bytes.fill(0xff, second + 2000, second + 6000);
    const result = await openImage(bytes);
    if (!('refused' in result)) throw new Error('must be refused');
    expect(result.refused.message).toContain('page 2');
  });
});
