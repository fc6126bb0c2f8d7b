import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { recipeFromText } from '../../src/config/recipe-from-text.js';
import type { Box } from '../../src/geometry/box.js';
import { locateRungs } from '../../src/draft/locate-parts.js';
import { mend } from '../../src/draft/mend.js';
import { part, recipeText, stepPart, yamlList, type Plan } from '../../src/draft/plan.js';
import type { Sample, SamplePage, Seen } from '../../src/draft/sample.js';
import { settleDoubts } from '../../src/draft/settle-doubts.js';
import { slipParts } from '../../src/draft/slip-parts.js';
import { splitParts } from '../../src/draft/split-parts.js';
import { wordsAsWritten } from '../../src/draft/as-written.js';
import { blankPages } from '../steps/on-sample.js';
import { TARGET } from './drafting.js';

const NOTHING = { kind: undefined, words: undefined, box: undefined };
const page = (number: number, seen: Seen, looksCoded = seen.kind === 'labels'): SamplePage => ({
  number,
  width: 612,
  height: 792,
  looksCoded,
  seen,
});
const labels = (edge: 'frame' | 'ink', ...boxes: readonly Box[]): Seen => ({
  kind: 'labels',
  labels: boxes.map((box) => ({ box, edge, inside: undefined, returns: undefined })),
  beside: NOTHING,
});
const slip = (words: string | undefined): Seen => ({ kind: 'slip', words });
const sample = (name: string, ...seen: readonly Seen[]): Sample => ({
  name,
  bytes: new Uint8Array(),
  document: blankPages(612, 792, seen.length),
  pages: seen.map((each, index) => page(index + 1, each)),
});
const UPPER: Box = { x: 90, y: 54, width: 432, height: 288 };
const texts = (parts: readonly { readonly text: string }[]): string[] => parts.map(({ text }) => text);

const PLAN: Plan = {
  split: part('split-pages'),
  locate: part('locate-label: frame'),
  rotate: part('rotate: upright'),
  scale: part('scale: { to: true-size, floor: 95% }'),
  slip: undefined,
  customs: undefined,
  verify: part('verify'),
};

describe('the text of a recipe', () => {
  it.each(['packing slip', 'bon de préparation', "sender's copy", 'no', 'true', '% off', 'a: b', '#1', 'cn 22', 'x ', '"', "''"])(
    'keeps the phrase %j whatever YAML would take it for',
    (phrase) => {
      const text = recipeText(
        { ...PLAN, split: stepPart('split-pages', { 'skip-words': yamlList([phrase]) }) },
        { head: [], about: 'Drafted.' },
      );
      expect((parse(text) as { steps: unknown[] }).steps[0]).toEqual({ 'split-pages': { 'skip-words': [phrase] } });
    },
  );

  it('is a checked recipe whose comments hold every remark, no line too long', () => {
    const head = ['Drafted.', '', `- ${'a long remark '.repeat(30).trim()}`];
    const text = recipeText({ ...PLAN, locate: part('locate-label: frame', 'Words. '.repeat(40).trim()) }, { head, about: 'Drafted.' });
    expect(recipeFromText(text, 'x.yaml').diagnostics).toEqual([]);
    expect(text.split('\n')[0]).toBe('# yaml-language-server: $schema=./recipe.schema.json');
    expect(text.match(/remark/g)).toHaveLength(30);
    expect(text.match(/Words/g)).toHaveLength(40);
    expect(Math.max(...text.split('\n').map((line) => line.length))).toBeLessThanOrEqual(112);
  });

  it('has mistakes reported like those of a file', () => {
    const { value, diagnostics } = recipeFromText('about: x\nsteps:\n  - split-page\n', 'x.yaml');
    expect([value, diagnostics[0]?.code]).toEqual([undefined, 'config/unknown-step']);
  });
});

describe('taking pages apart', () => {
  it('goes by words before positions, and by positions only where one pattern holds for all', () => {
    const two = sample('a', labels('frame', UPPER), slip('packing slip'));
    expect(texts(splitParts([two]))).toEqual([
      'split-pages: { slip-words: [packing slip] }',
      'split-pages: { slip-words: [packing slip] }',
      'split-pages: { labels: odd, slips: even }',
      'split-pages: { by: content }',
    ]);
    const other = sample('b', labels('frame', UPPER), labels('frame', UPPER), slip(undefined));
    expect(texts(splitParts([two, other]))).toEqual(['split-pages: { slips: last }', 'split-pages: { by: content }']);
  });

  it('leaves customs forms to what pages show: no word of split-pages names one', () => {
    const form: Seen = { kind: 'customs-form', words: 'cn 22' };
    expect(texts(splitParts([sample('a', labels('frame', UPPER), form)]))).toEqual(['split-pages: { by: content }']);
  });
});

describe('the ladder of evidence', () => {
  it('names a part of the page only where it holds the labels of all samples', () => {
    const inUpper = sample('a', labels('frame', UPPER));
    expect(texts(locateRungs([inUpper]).map((rung) => rung.part))[1]).toBe('locate-label: { place: upper-half, by: frame }');
    const lower = sample('b', labels('frame', { ...UPPER, y: 450 }));
    expect(texts(locateRungs([inUpper, lower]).map((rung) => rung.part))).toEqual([
      'locate-label: page',
      'locate-label: frame',
      'locate-label: picture',
      'locate-label: auto',
      'locate-label: { by: [page, frame, picture, ink] }',
    ]);
  });

  it('does not take ink that ends just inside a half for held by it: the next order may say more', () => {
    const ink = (width: number): Sample => sample('a', labels('ink', { x: 30, y: 300, width, height: 400 }));
    const placesOf = (each: Sample): boolean => locateRungs([each]).some(({ part: { text } }) => text.includes('left-half'));
    expect([placesOf(ink(272)), placesOf(ink(264))]).toEqual([false, true]);
  });
});

describe('slips beside labels', () => {
  const beside = (box: Box, label = UPPER): Seen => ({
    kind: 'labels',
    labels: [{ box: label, edge: 'frame', inside: undefined, returns: undefined }],
    beside: { kind: 'packing-slip', words: 'packing slip', box },
  });

  it('are in the half that has all of them, else on all paper of one side', () => {
    const low = { x: 36, y: 414, width: 540, height: 200 };
    const [first] = slipParts([sample('a', beside(low))]);
    expect(first?.text).toBe('packing-slip: { from: same-page, place: lower-half }');
    const high = { ...low, y: 360, height: 300 };
    // From the label's lower edge (342 pt, 120.65 mm, to a tenth) to the page's end.
    expect(slipParts([sample('a', beside(low)), sample('b', beside(high))]).map((each) => each?.text)).toEqual([
      'packing-slip: { from: same-page, box: [0.0mm, 120.6mm, 215.9mm, 158.8mm] }',
    ]);
  });

  it('are not looked for where none was seen', () => {
    expect(slipParts([sample('a', labels('frame', UPPER))])).toEqual([undefined]);
  });
});

describe('a page with more than one answer', () => {
  const candidate = (box: Box) => ({ box, edge: 'frame' as const, codes: [], score: 0.9, evidence: [] });
  const reason = { code: 'draft/unsettled', message: 'm', remedy: 'r' } as const;
  const inner = { ...UPPER, x: 120, width: 300 };
  const doubtful: Seen = { kind: 'unsettled', reason, candidates: [candidate(inner), candidate(UPPER)] };

  it('is settled by the others when they all agree', () => {
    const [, settled] = settleDoubts([sample('a', labels('frame', UPPER)), sample('b', doubtful)]);
    expect(settled?.pages[0]?.seen).toMatchObject({ kind: 'labels', settledByOthers: true, labels: [{ box: UPPER }] });
  });

  it('stays open when they do not, when there are none, or when the answers are two labels', () => {
    const moved = sample('c', labels('frame', { ...UPPER, y: 80 }));
    const apart: Seen = { ...doubtful, candidates: [candidate(UPPER), candidate({ ...UPPER, y: 450 })] };
    for (const samples of [
      [sample('b', doubtful), sample('a', labels('frame', UPPER)), moved],
      [sample('b', doubtful)],
      [sample('b', apart), sample('a', labels('frame', UPPER))],
    ])
      expect(settleDoubts(samples)[0]?.pages[0]?.seen.kind).toBe('unsettled');
  });
});

describe('what one more option cures', () => {
  const problem = (code: 'scale/too-large' | 'rotate/doubtful' | 'verify/nothing-to-prove' | 'verify/cut') => ({
    sample: 'a',
    page: 1,
    reason: { code, message: 'm', remedy: 'r' },
  });
  const samples = (width: number, height: number): Sample[] => [sample('a', labels('frame', { x: 20, y: 20, width, height }))];
  const label = (turn: 0 | 90, end: 'printed' | 'held') => ({ page: 1, role: 'label' as const, box: UPPER, turn, end, reason: undefined });

  it('a label a little too large is shrunk, and the seller is told; one much too large is not', () => {
    const tried = { problems: [problem('scale/too-large')], pieces: [] };
    const mended = mend(PLAN, tried, samples(288, 486), TARGET.media);
    expect(mended?.plan.scale.text).toBe('scale: { to: true-size, floor: 88% }');
    expect(mended?.remark).toContain('shrunk, down to 88%');
    expect(mend(PLAN, tried, samples(288, 576), TARGET.media)).toBeUndefined();
  });

  it('labels without words lie as the others do, where those agree', () => {
    const problems = [problem('rotate/doubtful')];
    const turned = mend(PLAN, { problems, pieces: [label(90, 'printed'), label(90, 'printed'), label(0, 'held')] }, [], TARGET.media);
    expect(turned?.plan.rotate.text).toBe('rotate: 90');
    expect(mend(PLAN, { problems, pieces: [label(90, 'printed'), label(0, 'printed')] }, [], TARGET.media)).toBeUndefined();
    expect(mend(PLAN, { problems, pieces: [label(0, 'held')] }, [], TARGET.media)).toBeUndefined();
  });

  it('nothing else is', () => {
    expect(mend(PLAN, { problems: [problem('verify/cut')], pieces: [] }, samples(288, 432), TARGET.media)).toBeUndefined();
    const both = [problem('scale/too-large'), problem('verify/cut')];
    expect(mend(PLAN, { problems: both, pieces: [] }, samples(288, 486), TARGET.media)).toBeUndefined();
    // A page with what looks like a code must be proved.
    expect(mend(PLAN, { problems: [problem('verify/nothing-to-prove')], pieces: [] }, samples(288, 432), TARGET.media)).toBeUndefined();
  });
});

it('a phrase is written as the page has it, for split-pages compares letter by letter', () => {
  const base = blankPages(612, 792).page(1);
  const word = (text: string) => ({ text, box: UPPER, turn: 0 as const, fontSize: 10 });
  const saying = { ...base, words: () => ['Votre', 'BON', 'de', 'Préparation:', '42'].map(word) };
  expect(wordsAsWritten(saying, 'bon de preparation')).toBe('bon de préparation');
  expect(wordsAsWritten(saying, 'packing slip')).toBeUndefined();
});
