import { describe, expect, it } from 'vitest';
import { mmToPt } from '../../src/geometry/length.js';
import { hazardMarks, type HazardMark } from '../../src/locating/hazard-marks.js';
import type { SourceDocument } from '../../src/reading/source.js';
import { foreignFiles } from '../samples/foreign/load.js';
import { LAYOUTS } from '../samples/layouts.js';
import { QUARTER_TURNS, sample } from '../samples/sample.js';
import { opened } from '../reading/risky-pages.js';
import { asPicture, asVectors, diamond, hazardLabel, limitedQuantity, SIZE, stripedFrame, withWords } from './mark-art.js';

function marksOn(source: SourceDocument): readonly HazardMark[] {
  try {
    const page = source.page(1);
    return hazardMarks(page, { x: 0, y: 0, width: page.width, height: page.height });
  } finally {
    source.close();
  }
}

/** Middle and width of a mark's box in mm. */
const inMm = ({ box }: HazardMark): { x: number; y: number; width: number } => ({
  x: (box.x + box.width / 2) / mmToPt(1),
  y: (box.y + box.height / 2) / mmToPt(1),
  width: box.width / mmToPt(1),
});

/** Where a point of the upright label (mm) lies after a clockwise turn. */
function turned(x: number, y: number, turn: number): { x: number; y: number } {
  if (turn === 90) return { x: SIZE.height - y, y: x };
  if (turn === 180) return { x: SIZE.width - x, y: SIZE.height - y };
  return turn === 270 ? { x: y, y: SIZE.width - x } : { x, y };
}

describe('squares on their point', () => {
  const drawn: readonly (readonly [string, string, number, string])[] = [
    ['a limited-quantity mark of 25 mm', limitedQuantity(60, 40, 25, 1.2), 25, 'limited-quantity mark'],
    ['one of 50 mm', limitedQuantity(60, 40, 50, 1.5), 50, 'limited-quantity mark'],
    ['one of 10.5 mm: shrunk with its page', limitedQuantity(60, 40, 10.5, 0.7), 10.5, 'limited-quantity mark'],
    ['a white diamond of 30 mm', diamond(60, 40, 30, 1), 30, 'square on its point'],
    ['a red hazard label', hazardLabel(60, 40, 40, 'red'), 40, 'square on its point'],
    ['a green one', hazardLabel(60, 40, 30, 'green'), 30, 'square on its point'],
  ];

  describe.each(drawn)('%s', (_, svg, side, what) => {
    it.each(QUARTER_TURNS)('as vectors, turned %i', async (turn) => {
      expectOne(
        marksOn(await asVectors(svg.replace(/<circle.*?\/>/, '<polygon points="60,30 64,36 56,36" fill="white"/>'), turn)),
        side,
        what,
        turn,
      );
    });
    it.each(QUARTER_TURNS)('as a picture of 203 dpi, turned %i', async (turn) => {
      expectOne(marksOn(await asPicture(svg, 203, turn)), side, what, turn);
    });
  });

  function expectOne(marks: readonly HazardMark[], side: number, what: string, turn: number): void {
    expect(marks).toMatchObject([{ kind: 'diamond', what }]);
    const { x, y, width } = inMm(marks[0] as HazardMark);
    const expected = turned(60, 40, turn);
    expect(Math.hypot(x - expected.x, y - expected.y)).toBeLessThan(1);
    expect(Math.abs(width - side * Math.SQRT2)).toBeLessThan(1.5);
  }

  it('two on one label, and one on a coarse picture', async () => {
    expect(marksOn(await asPicture(limitedQuantity(30, 30, 25, 1.5) + diamond(70, 100, 30, 1.5), 96))).toHaveLength(2);
  });

  it('with a frame around it and words across its inside', async () => {
    const inside = '<rect x="52" y="38" width="16" height="1.5"/><rect x="52" y="42" width="16" height="1.5"/>';
    const frame = '<rect x="30" y="10" width="60" height="60" fill="none" stroke="black" stroke-width="0.6"/>';
    expect(marksOn(await asPicture(limitedQuantity(60, 40, 30, 1.2) + inside + frame, 203))).toHaveLength(1);
  });

  it('only inside the box that is asked about', async () => {
    const source = await asPicture(limitedQuantity(60, 40, 25, 1.5), 203);
    const page = source.page(1);
    expect(hazardMarks(page, { x: 0, y: page.height / 2, width: page.width, height: page.height / 2 })).toEqual([]);
    source.close();
  });
});

describe('frames of slanted stripes', () => {
  it.each(QUARTER_TURNS)('a red one, turned %i', async (turn) => {
    const marks = marksOn(await asPicture(stripedFrame(10, 20, 80, 56, 4), 203, turn));
    expect(marks).toMatchObject([{ kind: 'hatched' }]);
    const { x, y } = inMm(marks[0] as HazardMark);
    const expected = turned(50, 48, turn);
    expect(Math.hypot(x - expected.x, y - expected.y)).toBeLessThan(3);
  });

  it('a black one, and a small one', async () => {
    expect(marksOn(await asPicture(stripedFrame(10, 20, 80, 56, 5, 'black'), 300))).toHaveLength(1);
    expect(marksOn(await asPicture(stripedFrame(20, 20, 50, 35, 2.5), 203))).toHaveLength(1);
  });
});

describe('what is none', () => {
  const stripes = (x: number, y: number, width: number, height: number): string =>
    stripedFrame(x, y, width, height, 4).replace(/<rect x="[^"]*" y="[^"]*" width="[^"]*" height="[^"]*" fill="(?:white|black)"\/>/g, '');
  it.each<[string, string]>([
    ['a thin diamond', diamond(50, 50, 30, 0.25)],
    ['a solid one', diamond(50, 50, 30, 1, 'fill="black"')],
    ['a very small one', diamond(50, 50, 7, 0.6)],
    ['an upright square', '<rect x="20" y="20" width="40" height="40" fill="none" stroke="black" stroke-width="1.5"/>'],
    ['a circle', '<circle cx="50" cy="50" r="20" fill="none" stroke="black" stroke-width="1.5"/>'],
    ['a triangle', '<polygon points="50,30 70,50 30,50" fill="none" stroke="black" stroke-width="1.5"/>'],
    ['a hexagon', '<polygon points="50,30 67,40 67,60 50,70 33,60 33,40" fill="none" stroke="black" stroke-width="1.5"/>'],
    ['a flat rhomb', '<polygon points="50,40 80,52 50,64 20,52" fill="none" stroke="black" stroke-width="1.5"/>'],
    ['a diamond without one side', '<polyline points="50,30 70,50 50,70 30,50" fill="none" stroke="black" stroke-width="1.5"/>'],
    ['an arrow head', '<polygon points="50,30 70,50 60,50 60,70 40,70 40,50 30,50" fill="none" stroke="black" stroke-width="1.5"/>'],
    ['a cross of slanted lines', '<path d="M20 20 L80 80 M80 20 L20 80" stroke="black" stroke-width="2"/>'],
    ['one band of stripes', stripes(10, 40, 80, 5)],
    ['a filled area of stripes', stripes(10, 40, 80, 50)],
    [
      'two bands of stripes without sides',
      stripes(10, 40, 80, 5) + stripes(10, 90, 80, 5).replaceAll('#f', '#g').replace('id="f"', 'id="g"'),
    ],
  ])('%s', async (_, svg) => {
    expect(marksOn(await asPicture(svg, 203))).toEqual([]);
  });

  it('a matrix of modules on its point', async () => {
    const modules: string[] = [];
    // Even and solid sides as a matrix code has them, the rest by a rule that repeats nowhere.
    for (let row = 0; row < 20; row++) {
      for (let column = 0; column < 20; column++) {
        const edge = column === 0 || row === 19 || ((row === 0 || column === 19) && (row + column) % 2 === 0);
        if (edge || (row * row * 7 + column * 13 + row * column * 5) % 11 < 5)
          modules.push(`<rect x="${column}" y="${row}" width="1.02" height="1.02"/>`);
      }
    }
    expect(marksOn(await asPicture(`<g transform="translate(50 30) rotate(45)">${modules.join('')}</g>`, 203))).toEqual([]);
  });

  it.each([
    'Unit 1266',
    'UN 12345 and UN1',
    'SUN 1993',
    'un 1993',
    'UN-RELATED 1993',
    'Unlimited quantity of fun',
    'quantity limited to 2',
    'Lithgow Street',
    'contains no dangerous goods',
    'Sample: not valid for carriage',
  ])('the words "%s"', async (line) => {
    expect(marksOn(await withWords([line]))).toEqual([]);
  });

  it('UN at the end of one line and a house number in the next but one', async () => {
    expect(marksOn(await withWords(['Sample Street UN', '', '1993 Example Road']))).toEqual([]);
  });
});

describe('words', () => {
  it.each<[string, string]>([
    ['UN 1993', 'UN number'],
    ['UN3480', 'UN number'],
    ['(UN3091)', 'UN number'],
    ['UN No. 1263', 'UN number'],
    ['LIMITED QUANTITY', 'limited quantity'],
    ['Ltd. Qty.', 'limited quantity'],
    ['LTD QTY', 'limited quantity'],
    ['Begrenzte Menge', 'limited quantity'],
    ['Quantité limitée', 'limited quantity'],
    ['CANTIDADES LIMITADAS', 'limited quantity'],
    ['Quantità limitata', 'limited quantity'],
    ['Beperkte hoeveelheid', 'limited quantity'],
    ['Excepted Quantity', 'excepted quantity'],
    ['Lithium ion batteries', 'lithium'],
    ['LITHIUM-METALL-BATTERIEN', 'lithium'],
    ['batterie al litio', 'lithium'],
    ['CARGO AIRCRAFT ONLY', 'cargo aircraft only'],
    ['Nur Frachtflugzeug', 'cargo aircraft only'],
    ['DRY ICE', 'dry ice'],
    ['ORM-D', 'ORM-D'],
  ])('%s', async (line, what) => {
    for (const turn of QUARTER_TURNS) {
      const marks = marksOn(await withWords(['Sample', line], turn));
      expect(marks).toMatchObject([{ kind: 'words', what }]);
    }
  });

  it('that stand apart are no wording', async () => {
    expect(marksOn(await withWords(['LIMITED']))).toEqual([]);
    expect(marksOn(await withWords(['CARGO AIRCRAFT', '', 'ONLY']))).toEqual([]);
  });

  it('are never handed on', async () => {
    const [mark] = marksOn(await withWords(['UN 1993 Rose Example']));
    expect(mark?.what).toBe('UN number');
  });
});

describe('no false alarm', () => {
  it.each(LAYOUTS.map((layout, index) => [layout.name, index] as const))('on the sample %s, in all kinds', async (name, index) => {
    const layout = LAYOUTS[index];
    if (!layout) throw new Error(name);
    for (const [at, kind] of layout.kinds.entries()) {
      const { bytes } = await sample(layout, kind, QUARTER_TURNS[(index + at) % 4] ?? 0);
      if (bytes[0] !== 0x25) continue;
      const source = await opened(bytes);
      for (let number = 1; number <= source.pageCount; number++) {
        const page = source.page(number);
        expect(hazardMarks(page, { x: 0, y: 0, width: page.width, height: page.height })).toEqual([]);
      }
      source.close();
    }
  });

  it.each(foreignFiles('tuning').map(({ file, bytes }) => [file, bytes] as const))('on %s', async (_, bytes) => {
    const source = await opened(bytes);
    for (let number = 1; number <= source.pageCount; number++) {
      const page = source.page(number);
      expect(hazardMarks(page, { x: 0, y: 0, width: page.width, height: page.height })).toEqual([]);
    }
    source.close();
  });
});
