import { describe, expect, it } from 'vitest';
import { summariesOf } from '../../src/batch/code-summary.js';
import { gridOf } from '../../src/geometry/grid.js';
import type { ProvedCode } from '../../src/proof/judge-codes.js';
import { brokenMatrixLimit, matrixNotes } from '../../src/proof/matrix-verdict.js';
import type { MatrixMeasure } from '../../src/proof/measure-matrix.js';
import type { Symbology } from '../../src/reading/source.js';
import type { ProofPlan } from '../../src/sheet/sheet.js';
import { code128, gs1DataMatrix, pdf417, qr, type CodeArt } from '../samples/code-art.js';
import { DOT, Drawing } from '../samples/drawing.js';
import { label, layout } from '../samples/layout.js';
import { sample } from '../samples/sample.js';
import { codeOf } from './code-of.js';
import { openSource, perfectSheets, pressAndProve, verdictOf } from './prove-sample.js';

const grid = gridOf('203dpi');
const REQUIRED: ProofPlan = { codes: 'required' };

/** A code that is as it should be, but for what a test says. */
function proved(
  symbology: Symbology,
  change: Partial<MatrixMeasure> = {},
  identifier = ']Q1',
  text = 'https://studio.example',
): ProvedCode {
  const moduleDots = change.moduleDots ?? 4;
  const matrix: MatrixMeasure = {
    columns: 21,
    rows: 21,
    moduleDots,
    moduleMm: (moduleDots / 203) * 25.4,
    moduleMil: (moduleDots / 203) * 1000,
    leastModuleDots: moduleDots,
    axial: 0,
    rowHeight: undefined,
    gridOff: 0,
    quiet: 10,
    modulation: 1,
    modulationAtGain: 1,
    unusedCorrection: 1,
    grade: 4,
    ...change,
  };
  return { code: codeOf(text, identifier, symbology), moduleDots: undefined, matrix };
}

const PARCEL = [']Q3', '00006141411234567890'] as const;
const judged = (code: ProvedCode, plan: ProofPlan = REQUIRED): string | undefined =>
  brokenMatrixLimit(code, plan, grid, { scale: 1 })?.code;

describe('limits of matrix and stacked codes on the dots', () => {
  it.each(['QR', 'Data Matrix', 'Aztec', 'PDF417'] as const)('%s: modules under 2 dots hold the label, unless set aside', (symbology) => {
    const fine = proved(symbology, { moduleDots: 1.9 });
    expect(judged(fine)).toBe('verify/too-fine');
    expect(judged(fine, { ...REQUIRED, allow: ['module-width'] })).toBeUndefined();
    expect(judged(proved(symbology, { moduleDots: 3 }))).toBeUndefined();
  });

  it('one direction under 2 dots is enough', () => {
    expect(judged(proved('QR', { moduleDots: 2.2, leastModuleDots: 1.8 }))).toBe('verify/too-fine');
  });

  it('PDF417 under 0.254 mm (ISO 15394, VERIFIED-S) holds at any resolution', () => {
    const at300 = proved('PDF417', { moduleDots: 2.8 });
    expect(brokenMatrixLimit(at300, REQUIRED, gridOf('300dpi'), { scale: 1 })?.message).toBe(
      'the modules of a PDF417 code come out 2.8 dots wide (0.24 mm); 2 dots and 0.254 mm are the least',
    );
    expect(brokenMatrixLimit(proved('PDF417', { moduleDots: 3 }), REQUIRED, gridOf('300dpi'), { scale: 1 })).toBeUndefined();
    // 2 dots of 203 dpi are 0.2502 mm: within what measuring may be off by.
    expect(judged(proved('PDF417', { moduleDots: 2 }))).toBeUndefined();
  });

  it('a QR code under 0.33 mm holds when it carries a parcel’s number, and is told otherwise', () => {
    expect(judged(proved('QR', { moduleDots: 2.2 }, ...PARCEL))).toBe('verify/too-fine');
    const link = proved('QR', { moduleDots: 2.2 });
    expect(judged(link)).toBeUndefined();
    expect(matrixNotes(link, grid)).toEqual(['a QR code: modules of 0.28 mm, at least 0.33 mm by rule on transport labels']);
  });

  it('too little clear paper holds whatever the code says, as beside bars; only a recipe sets it aside, and then it is told', () => {
    expect(judged(proved('PDF417', { quiet: 1.6 }))).toBe('verify/quiet-zone');
    expect(judged(proved('Data Matrix', { quiet: 0 }, ']d2', PARCEL[1]))).toBe('verify/quiet-zone');
    expect(judged(proved('QR', { quiet: 3.5 }, ...PARCEL))).toBe('verify/quiet-zone');
    expect(judged(proved('QR', { quiet: 3.5 }, ...PARCEL), { ...REQUIRED, allow: ['quiet-zone'] })).toBeUndefined();
    // A dot, here a quarter of a module, may be lost by rounding.
    expect(judged(proved('QR', { quiet: 3.75 }, ...PARCEL))).toBeUndefined();
    const link = proved('QR', { quiet: 2.4 });
    expect(judged(link)).toBe('verify/quiet-zone');
    expect(judged(link, { ...REQUIRED, allow: ['quiet-zone'] })).toBeUndefined();
    expect(judged(proved('Data Matrix', { quiet: 0 }, ']d1', 'studio'))).toBe('verify/quiet-zone');
    expect(matrixNotes(link, grid)).toEqual(['a QR code: 2.4 modules of clear paper on one side, at least 4 by rule']);
    expect(judged(proved('Aztec', { quiet: 0 }))).toBeUndefined();
  });

  it('rows of PDF417 under 3 modules (ISO/IEC 15438, VERIFIED-S) hold, unless set aside, and then they are told', () => {
    expect(judged(proved('PDF417', { rowHeight: 2 }))).toBe('verify/rows-too-low');
    expect(judged(proved('PDF417', { rowHeight: 2 }), { ...REQUIRED, allow: ['row-height'] })).toBeUndefined();
    // A dot of a row, here a quarter of a module, may be lost by rounding.
    expect(judged(proved('PDF417', { rowHeight: 2.75 }))).toBeUndefined();
    expect(matrixNotes(proved('PDF417', { rowHeight: 2 }), grid)).toEqual(['a PDF417 code: rows 2.0 modules high, at least 3 by rule']);
    expect(matrixNotes(proved('PDF417', { rowHeight: 3 }), grid)).toEqual([]);
  });

  it('figures whose limits are from memory hold nothing', () => {
    expect(judged(proved('QR', { axial: 0.3, gridOff: 0.9, grade: 0 }))).toBeUndefined();
  });

  it('what was not measured is not judged', () => {
    expect(judged({ code: codeOf('x', ']Q1', 'QR'), moduleDots: undefined })).toBeUndefined();
    expect(matrixNotes({ code: codeOf('x', ']Q1', 'QR'), moduleDots: undefined }, grid)).toEqual([]);
  });
});

/** A label with a row of bars and one matrix code, its modules `dots` of the 203 dpi grid wide, `blot` modules beside it ink. */
async function drawn(art: CodeArt, dots: number, blot?: number): Promise<Awaited<ReturnType<typeof pressAndProve>>['proofs'][number]> {
  const d = new Drawing(288, 432);
  d.edge = 'page';
  d.text(20, 40, 'SAMPLE, NOT VALID FOR CARRIAGE', { size: 10 });
  d.bars(code128('QH0417225588'), 400 * DOT, 300 * DOT, 3 * DOT, 60);
  // `matrix` is given the middle: its edges come to lie between dots.
  const [x, y] = [(400 + ((art.columns * dots) % 2) / 2) * DOT, 700 * DOT];
  d.matrix(art, x, y, dots * DOT);
  if (blot !== undefined) d.rect(x - (art.columns / 2 + blot + 2) * dots * DOT, y - 5, 2 * dots * DOT, 10);
  const pages = [{ width: 288, height: 432, regions: [label(d, 0, 0)] }];
  const made = await sample(layout({ name: 'matrix', about: 'One label.', traits: [], pages: () => pages }), 'vector', 0);
  const source = await openSource(made.bytes);
  try {
    const sheets = perfectSheets(made, source, '203dpi').map((sheet) => ({ ...sheet, proof: { ...REQUIRED, allow: ['decodability'] } }));
    const [proof] = (await pressAndProve(source, sheets, '203dpi')).proofs;
    if (!proof) throw new Error('one label, one proof');
    return proof;
  } finally {
    source.close();
  }
}

describe('from a drawn label to the account', () => {
  const stacked = pdf417('SAMPLE ROUTE 12 STOP 9', 4);
  const matrix = gs1DataMatrix(['00', '006141411234567890']);

  it('figures of a PDF417 and of a Data Matrix as they were drawn', async () => {
    const [, first] = summariesOf((await drawn(stacked, 3)).codes);
    expect(first?.matrix).toMatchObject({
      columns: stacked.columns,
      rows: stacked.rows,
      moduleDots: 3,
      moduleMm: 0.375,
      moduleMil: 14.78,
      rowHeightModules: 3,
      quietModules: 10,
      modulation: { asPlanned: 1, atGain: 1 },
      unusedErrorCorrection: 1,
      simulatedGrade: 4,
    });
    const second = summariesOf((await drawn(matrix, 4)).codes)[1]?.matrix;
    expect(second).toMatchObject({ columns: matrix.columns, rows: matrix.rows, moduleDots: 4, axialNonUniformity: 0, simulatedGrade: 4 });
    expect(second?.notSimulated).toEqual(['symbol contrast', 'reflectance', 'fixed pattern damage']);
  });

  it('modules of 1.7 dots, and ink one module beside a PDF417, hold the label', async () => {
    expect(verdictOf(await drawn(matrix, 1.7))).toBe('verify/too-fine');
    expect(verdictOf(await drawn(stacked, 3, 1))).toBe('verify/quiet-zone');
    expect(verdictOf(await drawn(stacked, 3, 2))).toBe('proved');
  });

  it('ink two modules beside a link’s QR holds the label, four modules don’t', async () => {
    const link = qr('https://studio.example/thanks');
    expect(verdictOf(await drawn(link, 4, 2))).toBe('verify/quiet-zone');
    expect(verdictOf(await drawn(link, 4, 4))).toBe('proved');
  });
});
