import { PDFArray, PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { grow } from '../../src/geometry/box.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample } from '../samples/sample.js';
import { onWholeDots, openSource, perfectSheets, pressAndProve, verdictOf } from './prove-sample.js';

const EVERYWHERE = '-2000 -2000 6000 6000';

/** A sample's page on a tone: what isn't drawn on has this grey (0 black, 255 white), everywhere or in a rectangle of PDF's user space. */
async function onTone(bytes: Uint8Array, grey: number, where = EVERYWHERE): Promise<Uint8Array> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false });
  for (const { node } of document.getPages()) {
    const paper = document.context.register(document.context.flateStream(`q ${String(grey / 255)} g ${where} re f Q`));
    const drawn = node.get(PDFName.of('Contents'));
    const contents = PDFArray.withContext(document.context);
    contents.push(paper);
    const all = node.Contents();
    if (all instanceof PDFArray) all.asArray().forEach((each) => contents.push(each));
    else if (drawn) contents.push(drawn);
    node.set(PDFName.of('Contents'), contents);
  }
  return document.save();
}

/** The verdict of a page of dots. `tone`: the grey, and where it lies. */
async function verdictOn(grey: number, tone: 'paper' | 'panels'): Promise<readonly string[]> {
  const layout = LAYOUTS.find(({ name }) => name === 'letter-upper-sideways');
  if (!layout) throw new Error('no layout');
  const each = await sample(layout, 'vector', 0);
  const [page] = each.expected.pages;
  const boxes = page?.labels[0]?.codes.map(({ box }) => grow(box, 24)) ?? [];
  expect(boxes.length).toBeGreaterThan(0);
  const panels = boxes.map(
    ({ x, y, width, height }) => `${String(x)} ${String((page?.height ?? 0) - y - height)} ${String(width)} ${String(height)}`,
  );
  let { bytes } = each;
  for (const where of tone === 'paper' ? [EVERYWHERE] : panels) bytes = await onTone(bytes, grey, where);
  const source = await openSource(bytes);
  try {
    const sheets = await onWholeDots(perfectSheets(each, source, '203dpi'), source, '203dpi');
    const { proofs } = await pressAndProve(source, sheets, '203dpi', { asDots: true });
    return proofs.map(verdictOf);
  } finally {
    source.close();
  }
}

describe('a page of dots has no screen in its codes and beside them', () => {
  it.each([240, 230, 200, 180])('on paper of grey %i', async (grey) => {
    expect(await verdictOn(grey, 'paper')).toEqual(['proved']);
  });

  it.each([240, 225, 200, 180])('on panels of grey %i', async (grey) => {
    expect(await verdictOn(grey, 'panels')).toEqual(['proved']);
  });
});
