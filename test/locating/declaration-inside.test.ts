import { describe, expect, it } from 'vitest';
import type { Box } from '../../src/geometry/box.js';
import type { Edge } from '../../src/locating/candidate.js';
import { withDeclarationInside } from '../../src/locating/declaration-inside.js';
import { codesIn } from '../../src/locating/gather.js';
import { saidIn } from '../../src/locating/kind-of-words.js';
import { survey } from '../../src/locating/survey.js';
import { codeLikeAreas } from '../../src/reading/code-like.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';
import type { QuarterTurn } from '../samples/sample.js';
import { mediaNamed } from '../steps/on-sample.js';

interface Made {
  readonly box: Box;
  readonly drawing: Drawing;
}

const framed = (width: number, height: number): Drawing => new Drawing(842, 842).frame(40, 60, width, height, 1);

/** Sender, receiver and a number in bars, from a corner. */
function labelHalf(d: Drawing, x: number, y: number, number = 'RX433195708ZZ'): void {
  d.text(x + 10, y + 24, 'Postalba', { size: 16 }).bars(code128(number), x + 144, y + 70, 1.2, 50);
  d.block(x + 10, y + 126, ['Von', 'Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187'], { size: 8 });
  d.block(x + 150, y + 126, ['An', 'Bela Invented', '3 Sample Row', 'Alder Halt EX 00188'], { size: 10 });
}

function declarationHalf(d: Drawing, x: number, y: number): void {
  d.text(x + 10, y + 16, 'Customs declaration', { size: 12, bold: true }).text(x + 230, y + 16, 'CN 22', { size: 12 });
  d.block(x + 10, y + 40, ['2 Bud vase', '1 Ramen bowl', '3 Salt pig'], { size: 8 }, 2);
  d.block(x + 230, y + 40, ['54.00', '31.50', '28.00'], { size: 8 }, 2);
  d.text(x + 10, y + 130, 'Sample, not valid for carriage', { size: 7 });
}

function above(): Made {
  const drawing = framed(288, 432);
  labelHalf(drawing, 40, 60);
  declarationHalf(drawing, 40, 270);
  return { box: { x: 40, y: 60, width: 288, height: 432 }, drawing };
}

function beside(): Made {
  const drawing = framed(580, 220);
  labelHalf(drawing, 40, 60);
  declarationHalf(drawing, 340, 60);
  return { box: { x: 40, y: 60, width: 580, height: 220 }, drawing };
}

/** A form: its title first, then the same as on a label. */
function form(): Made {
  const drawing = framed(288, 432);
  declarationHalf(drawing, 40, 60);
  labelHalf(drawing, 40, 250);
  return { box: { x: 40, y: 60, width: 288, height: 432 }, drawing };
}

async function seen({ box, drawing }: Made, edge: Edge = 'frame', turn: QuarterTurn = 0) {
  const page = await drawnPage(drawing, turn);
  const phrases = phrasesOf(page.words());
  const codes = codesIn(codeLikeAreas(page), box);
  return withDeclarationInside({ box, edge, codes, score: 1, evidence: [], said: saidIn(phrases, box) }, phrases);
}

describe('a declaration inside a label', () => {
  it.each([
    ['below the addresses', above],
    ['beside them', beside],
  ])('%s takes no name of a form', async (_, made) => {
    const label = await seen(made());
    expect(label).toMatchObject({ declares: true, said: { names: [] } });
  });

  it('is told on a page that lies on its side, too', async () => {
    const { drawing } = above();
    // The page's lower left corner comes first.
    expect(await seen({ box: { x: 350, y: 40, width: 432, height: 288 }, drawing }, 'frame', 90)).toMatchObject({ declares: true });
  });

  it.each([
    ['a form, which begins with its title', form],
    [
      'a form with a code and nobody above its title',
      (): Made => {
        const made = form();
        made.drawing.items.splice(0, made.drawing.items.length);
        made.drawing.frame(40, 60, 288, 432, 1).bars(code128('RX433195708ZZ'), 184, 110, 1.2, 50);
        declarationHalf(made.drawing, 40, 200);
        return made;
      },
    ],
    [
      'what has items above its title',
      (): Made => {
        const made = above();
        made.drawing.block(50, 250, ['2', '1'], { size: 8 });
        made.drawing.block(80, 250, ['Bud vase', 'Ramen bowl'], { size: 8 });
        return made;
      },
    ],
  ])('is none in %s', async (_, made) => {
    const candidate = await seen(made());
    expect(candidate.declares).toBeUndefined();
    expect(candidate.said.names.map(({ kind }) => kind)).toEqual(['customs-form']);
  });

  it('is not looked for in ink that ends anywhere', async () => {
    const made = above();
    expect((await seen({ ...made, box: { ...made.box, height: 380 } }, 'ink')).declares).toBeUndefined();
  });
});

describe('a form of its own', () => {
  /** A CN 23: its title in type no larger than the rest, sender and receiver captioned as on a label, an item's number to its right. */
  function plainForm(above = 0): Drawing {
    const d = new Drawing(842, 842)
      .frame(40, 60, 517, 332, 1)
      .text(50, 84 + above, 'CUSTOMS DECLARATION / CN 23', { size: 10, bold: true });
    if (above > 0) d.text(50, 84, 'Postalba', { size: 10 });
    d.block(50, 110 + above, ['From', 'Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187'], { size: 9 });
    d.block(50, 180 + above, ['To', 'Bela Invented', '3 Sample Row', 'Alder Halt EX 00188'], { size: 10 });
    d.bars(code128('CP433195708ZZ'), 380, 150, 1, 40)
      .text(50, 250 + above, 'Contents', { size: 9 })
      .text(340, 250 + above, 'Qty', { size: 9 });
    d.text(50, 265 + above, 'Bud vase', { size: 9 }).text(340, 265 + above, '2', { size: 9 });
    return d;
  }

  it('has its title first, which is a heading however small it is', async () => {
    const box = { x: 40, y: 60, width: 517, height: 332 };
    const headings = async (above: number) => (await seen({ box, drawing: plainForm(above) })).said.names.map(({ heading }) => heading);
    expect(await headings(0)).toEqual([true]);
    expect(await headings(30)).toEqual([false]);
    const page = await drawnPage(plainForm());
    expect(await survey(page, mediaNamed('4x6in'), (part) => page.codes(part, 203 / 72))).toMatchObject({
      kind: 'named',
      name: { kind: 'customs-form' },
    });
  });
});

describe('a form beside a label without an edge', () => {
  it('is not taken for a part of it', async () => {
    const d = new Drawing(842, 595);
    labelHalf(d, 40, 30);
    d.frame(330, 40, 250, 120, 1).text(340, 56, 'CUSTOMS DECLARATION', { size: 8, bold: true });
    d.block(340, 80, ['2 Bud vase', '1 Ramen bowl'], { size: 8 }, 2);
    d.text(50, 220, 'Sample, not valid for carriage', { size: 7 });
    const page = await drawnPage(d);
    const seen = await survey(page, mediaNamed('4x6in'), (part) => page.codes(part, 203 / 72));
    const boxes = seen.kind === 'labels' ? seen.labels.map(({ box }) => box.x + box.width) : [];
    expect(boxes.every((right) => right < 340)).toBe(true);
  });
});

describe('survey', () => {
  const surveyed = async (number: string) => {
    const drawing = framed(288, 432);
    labelHalf(drawing, 40, 60, number);
    declarationHalf(drawing, 40, 270);
    drawing.text(400, 80, 'Instructions', { size: 20 }).block(400, 110, ['Print this page.', 'Cut the label out.'], { size: 9 });
    const page = await drawnPage(drawing);
    return survey(page, mediaNamed('4x6in'), (box) => page.codes(box, 203 / 72));
  };

  it('finds a label with its declaration inside, beside instructions, by a number that may be a parcel’s', async () => {
    expect(await surveyed('RX433195708ZZ')).toMatchObject({ kind: 'labels', labels: [{ edge: 'frame' }] });
    expect((await surveyed('MUGS-17')).kind).not.toBe('labels');
  });
});
