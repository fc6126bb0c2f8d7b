import { describe, expect, it } from 'vitest';
import { summariesOf } from '../../src/batch/code-summary.js';
import type { ProvedCode } from '../../src/proof/judge-codes.js';
import { brokenMaxiCodeLimit, maxiCodeNotes } from '../../src/proof/maxicode-verdict.js';
import type { Proof } from '../../src/proof/prove.js';
import type { ProofPlan } from '../../src/sheet/sheet.js';
import { code128, maxiCode } from '../samples/code-art.js';
import { DOT, Drawing } from '../samples/drawing.js';
import { label, layout } from '../samples/layout.js';
import { sample, type QuarterTurn } from '../samples/sample.js';
import { codeOf } from './code-of.js';
import { openSource, perfectSheets, pressAndProve, verdictOf } from './prove-sample.js';

const REQUIRED: ProofPlan = { codes: 'required', allow: ['decodability'] };
const MODULE = (0.88 / 25.4) * 72;
/** Of the drawn symbol, pt: 30 columns and 33 rows, less what its hexagons leave at the edges. */
const HALF = { across: 14.93 * MODULE, down: (0.76 / 25.4) * 72 * 16 + (0.44 / 25.4) * 72 };

interface Drawn {
  /** Modules of paper between the symbol and a line beside it; which side. */
  readonly gap?: number;
  readonly side?: 'left' | 'right' | 'above' | 'below';
  readonly turn?: QuarterTurn;
  /** As the channel draws it, and as the recipe prints it. */
  readonly drawnAt?: number;
  readonly scale?: number;
  readonly plan?: ProofPlan;
  /** White over its modules left and right of the finder. */
  readonly smeared?: boolean;
}

/** A label with a MaxiCode and a row of bars, pressed and proved. */
async function proved({ gap, side, turn = 0, drawnAt = 1, scale = 1, plan = REQUIRED, smeared = false }: Drawn): Promise<Proof> {
  const d = new Drawing(288, 432);
  d.edge = 'page';
  d.text(20, 40, 'SAMPLE, NOT VALID FOR CARRIAGE', { size: 10 });
  d.bars(code128('QH0417225588'), 144, 340, 3 * DOT, 60);
  const [x, y] = [144, 180];
  d.maxi(maxiCode('KM 00012 001 041722558800 1/1 4711'), x, y);
  if (smeared)
    for (const from of [x - HALF.across, x + 0.4 * HALF.across]) d.rect(from, y - HALF.down, 0.6 * HALF.across, 1.6 * HALF.down, 1);
  const thick = 3;
  if (gap !== undefined) {
    const [across, down] = [HALF.across + gap * MODULE, HALF.down + gap * MODULE];
    if (side === 'above') d.rect(x - 20, y - down - thick, 40, thick);
    else if (side === 'below') d.rect(x - 20, y + down, 40, thick);
    else if (side === 'right') d.rect(x + across, y - 20, thick, 40);
    else d.rect(x - across - thick, y - 20, thick, 40);
  }
  const size = { width: 288 * drawnAt, height: 432 * drawnAt };
  const regions = [label(d, 0, 0, 0, drawnAt)];
  const made = await sample(layout({ name: 'maxi', about: 'One label.', traits: [], pages: () => [{ ...size, regions }] }), 'vector', turn);
  const source = await openSource(made.bytes);
  try {
    const sheets = perfectSheets(made, source, '203dpi').map((sheet) => ({ ...sheet, scale, proof: plan }));
    const [proof] = (await pressAndProve(source, sheets, '203dpi')).proofs;
    if (!proof) throw new Error('one label, one proof');
    return proof;
  } finally {
    source.close();
  }
}

describe('clear paper around a MaxiCode: a module of 0.88 mm (handbook section 4.4, VERIFIED-S)', () => {
  it.each(['left', 'right', 'above', 'below'] as const)('ink half a module %s of it holds the label, a module doesn’t', async (side) => {
    expect(verdictOf(await proved({ gap: 0.5, side }))).toBe('verify/quiet-zone');
    expect(verdictOf(await proved({ gap: 1.1, side }))).toBe('proved');
  });

  it('whichever way the page lies', async () => {
    for (const turn of [90, 180, 270] as const)
      expect(verdictOf(await proved({ gap: 0.5, side: 'right', turn })), `${turn}`).toBe('verify/quiet-zone');
  });

  it('may be set aside, and is told then', async () => {
    const { verdict, notes } = await proved({ gap: 0.5, side: 'left', plan: { ...REQUIRED, allow: ['decodability', 'quiet-zone'] } });
    expect(verdict).toBe('proved');
    expect(notes?.[0]).toMatch(/^a MaxiCode: 0\.\d modules of clear paper on one side, at least 1 by rule$/);
  });
});

it('a MaxiCode of which only the rings are left to see is not passed over, unless set aside, and then it is told', async () => {
  const { verdict } = await proved({ smeared: true });
  expect(verdict).toMatchObject({ code: 'verify/unread-bars', message: expect.stringMatching(/^the rings/) as string });
  const allowed = await proved({ smeared: true, plan: { ...REQUIRED, allow: ['decodability', 'maxicode-unread'] } });
  expect(allowed).toMatchObject({ verdict: 'proved', notes: ['a MaxiCode: its rings were seen, it was not read'] });
});

describe('size of a MaxiCode: 94 to 106 % of its one size (handbook section 4.4, VERIFIED-S)', () => {
  it('measures what was drawn', async () => {
    const { codes } = await proved({});
    const measure = codes.find(({ maxicode }) => maxicode)?.maxicode;
    expect(measure?.scale).toBeCloseTo(1, 1);
    expect(Math.abs((measure?.scale ?? 0) - 1)).toBeLessThan(0.01);
    expect(measure?.quiet).toBe(2);
    const figures = summariesOf(codes).find(({ symbology }) => symbology === 'MaxiCode')?.maxicode;
    expect(figures?.quietModules).toBe(2);
    // 26.38 mm by the standard; the sample's hexagons leave a little at the edges.
    expect(Math.abs((figures?.widthMm ?? 0) - 26.3)).toBeLessThan(0.2);
  });

  it('drawn at 90 % by the channel it is held, as the source has it, unless set aside', async () => {
    const { verdict } = await proved({ drawnAt: 0.9 });
    expect(verdict).toMatchObject({
      code: 'verify/maxicode-size',
      message: expect.stringContaining('and so it is in the source') as string,
    });
    expect(verdictOf(await proved({ drawnAt: 0.9, plan: { ...REQUIRED, allow: ['decodability', 'maxicode-size'] } }))).toBe('proved');
    expect(verdictOf(await proved({ drawnAt: 0.96 }))).toBe('proved');
  });

  it('shrunk by a recipe it is held whatever is allowed', async () => {
    const { verdict } = await proved({ scale: 0.92, plan: { ...REQUIRED, allow: ['decodability', 'maxicode-size'] } });
    expect(verdict).toMatchObject({ code: 'verify/maxicode-size', message: expect.stringContaining('shrunk to 92 %') as string });
  });

  it('changes at 0.98 of 94 %, and a large one is told', () => {
    const at = (scale: number): ProvedCode => ({
      code: codeOf('KM', ']U0', 'MaxiCode'),
      moduleDots: undefined,
      maxicode: { scale, widthMm: 26.38 * scale, quiet: 2, moduleDots: 7 * scale },
    });
    expect(brokenMaxiCodeLimit(at(0.922), REQUIRED, 1)).toBeUndefined();
    expect(brokenMaxiCodeLimit(at(0.921), REQUIRED, 1)?.code).toBe('verify/maxicode-size');
    expect(maxiCodeNotes(at(0.92))).toEqual(['a MaxiCode: 92 % of its one size, at least 94 % by rule']);
    expect(maxiCodeNotes(at(1.1))).toEqual(['a MaxiCode: 110 % of its one size, at most 106 % by rule']);
    expect(maxiCodeNotes(at(1))).toEqual([]);
  });
});
