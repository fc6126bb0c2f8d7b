import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect } from 'vitest';
import { pattern } from '../faults/inputs/pictures.js';
import { inTempFolder, outsideCheck, runTool } from '../outside/tools.js';
import { expectPixels, opened, pictureOf } from './opened-picture.js';

const LABEL = pattern(406, 609);

describe('open-image: what another program sees', () => {
  // ImageMagick draws and measures; the product reads by libvips.
  const drawn: [string, readonly string[], string][] = [
    ['a PNG with 16 bits a colour', ['-depth', '16', '-define', 'png:bit-depth=16', '-define', 'png:color-type=2'], 'png'],
    ['an interlaced palette PNG', ['-interlace', 'PNG', '-define', 'png:color-type=3'], 'png'],
    ['a CCITT group 4 TIFF', ['-monochrome', '-compress', 'Group4'], 'tif'],
    ['a big-endian PackBits TIFF', ['-define', 'tiff:endian=msb', '-compress', 'RLE'], 'tif'],
    ['a GIF', [], 'gif'],
    ['a lossless WebP', ['-define', 'webp:lossless=true'], 'webp'],
  ];
  const makePattern = (folder: string, options: readonly string[], name: string): string => {
    const from = join(folder, 'pattern.pgm');
    writeFileSync(from, Buffer.concat([Buffer.from(`P5\n${LABEL.width} ${LABEL.height}\n255\n`), LABEL.data]));
    const to = join(folder, name);
    runTool('convert', [from, ...options, to]);
    return to;
  };
  for (const [name, options, ending] of drawn)
    outsideCheck(`${name} written by ImageMagick`, ['convert'], () =>
      inTempFolder(async (folder) => {
        const path = makePattern(folder, options, `picture.${ending}`);
        const bytes = runTool('convert', [path, `${ending === 'tif' ? 'tiff' : ending}:-`]);
        const document = await opened(bytes);
        expectPixels(pictureOf(document), LABEL);
        const theirs = runTool('convert', [path, '-colorspace', 'Gray', '-depth', '8', 'gray:-']);
        expect(Buffer.compare(pictureOf(document).data, theirs)).toBe(0);
      }),
    );
  outsideCheck('a CMYK JPEG written by ImageMagick', ['convert'], () =>
    inTempFolder(async (folder) => {
      const path = makePattern(folder, ['-colorspace', 'CMYK', '-quality', '95'], 'picture.jpg');
      const picture = pictureOf(await opened(runTool('convert', [path, 'jpeg:-'])));
      const dark = picture.data[(10 * picture.width + 10) * picture.channels] ?? 255;
      const paper = picture.data[(300 * picture.width + 50) * picture.channels] ?? 0;
      expect(dark).toBeLessThan(90);
      expect(paper).toBeGreaterThan(245);
    }),
  );
});
