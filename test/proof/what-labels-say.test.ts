import bwipjs from 'bwip-js';
import { PDFDocument, rgb } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { openSource } from '../../src/batch/open-source.js';
import { gridOf } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { scale } from '../../src/steps/scale.js';
import { optionsOf } from '../steps/on-sample.js';
import { onWholeDots, pressAndProve, verdictOf } from './prove-sample.js';

/** A label of 4×6 in with one GS1-128 code of 4 dots a module at 203 dpi. */
async function label(elements: string): Promise<Uint8Array> {
  const [{ sbs }] = bwipjs.raw({ bcid: 'gs1-128', text: elements, dontlint: true } as never) as unknown as [{ sbs: number[] }];
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const page = pdf.addPage([288, 432]);
  const module = (4 / 203) * 72;
  let at = 30;
  sbs.forEach((each, index) => {
    if (index % 2 === 0) page.drawRectangle({ x: at, y: 60, width: each * module, height: 90, color: rgb(0, 0, 0) });
    at += each * module;
  });
  page.drawText('SAMPLE, NOT VALID FOR CARRIAGE', { x: 20, y: 20, size: 10 });
  return pdf.save();
}

const SHEET: Sheet = { ...pageSheet(1, 288, 432), role: 'label' };

async function verdict(bytes: Uint8Array, allow: readonly string[] = []): Promise<string> {
  const source = await openSource(bytes);
  if ('refused' in source) throw new Error(source.refused.message);
  const [sheet] = await onWholeDots([SHEET], source, '203dpi');
  if (!sheet) throw new Error('no sheet');
  const { proofs } = await pressAndProve(source, [{ ...sheet, proof: { codes: 'required', allow } }], '203dpi');
  source.close();
  return verdictOf(proofs[0]);
}

describe('what the code of a label says', () => {
  // GenSpecs figure 6.6.5-1 and its negative, by way of zint (handbook section 11.1, secondary).
  it('a wrong check digit of the source is the source’s, and holds the label', async () => {
    expect(await verdict(await label('(00)006141411234567890'))).toBe('proved');
    const wrong = await label('(00)006141411234567891');
    expect(await verdict(wrong)).toBe('verify/check-digit');
    expect(await verdict(wrong, ['check-digit'])).toBe('proved');
  });
});

describe('a hazard mark', () => {
  async function scaled(words: string, height: number): Promise<Sheet | undefined> {
    const pdf = await PDFDocument.create({ updateMetadata: false });
    const drawn = pdf.addPage([288, height]);
    drawn.drawRectangle({ x: 2, y: 2, width: 284, height: height - 4, borderWidth: 1 });
    drawn.drawText(words, { x: 30, y: 200, size: 14 });
    const source = await openSource(await pdf.save());
    if ('refused' in source) throw new Error(source.refused.message);
    const context = { document: source, media: mediaNamed('4x6in'), grid: gridOf('203dpi') };
    const [made] = await scale.apply([{ ...SHEET, box: { x: 0, y: 0, width: 288, height } }], optionsOf(scale), context);
    source.close();
    return made;
  }

  it('keeps a label from being shrunk: it is held, with the caution', async () => {
    const shrunk = await scaled('LIMITED QUANTITY', 445);
    expect(shrunk?.state).toMatchObject({ kind: 'held', code: 'scale/hazard-mark' });
    expect(JSON.stringify(shrunk?.state)).toContain('trained staff');
    expect((await scaled('UN3480 LITHIUM ION BATTERIES', 445))?.state).toMatchObject({ code: 'scale/hazard-mark' });
  });

  it('is no matter at true size, and other labels are shrunk', async () => {
    expect(await scaled('LIMITED QUANTITY', 432)).toMatchObject({ state: { kind: 'planned' }, scale: 1 });
    expect((await scaled('FRAGILE', 445))?.scale).toBeCloseTo(432 / 445, 3);
  });
});
