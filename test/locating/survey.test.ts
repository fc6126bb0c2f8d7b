import { describe, expect, it } from 'vitest';
import { contains, intersection, type Box } from '../../src/geometry/box.js';
import { survey, type Survey } from '../../src/locating/survey.js';
import { code128, gs1Code128 } from '../samples/code-art.js';
import { label, other, slip, type LayoutPage } from '../samples/layout.js';
import { quillhaul } from '../samples/labels/quillhaul.js';
import { contentFor } from '../samples/content.js';
import { instructionsPage, openedPages, slipPage, slipPageWithBars } from '../steps/on-pages.js';
import { mediaNamed } from '../steps/on-sample.js';
import * as pages from './survey-pages.js';

const MEDIA = mediaNamed('4x6in');

async function surveyOf(page: LayoutPage): Promise<Survey> {
  const document = await openedPages([page]);
  const first = document.page(1);
  const seen = await survey(first, MEDIA, (box) => first.codes(box, 203 / 72));
  document.close();
  return seen;
}

const labelsOf = (seen: Survey) => (seen.kind === 'labels' ? seen : expect.fail(JSON.stringify(seen)));
const near = (a: Box, b: Box): boolean =>
  [a.x - b.x, a.y - b.y, a.width - b.width, a.height - b.height].every((difference) => Math.abs(difference) < 2.8);
/** Where `pages.sidewaysLabel` lies. */
const sideways = (y: number): Box => ({ x: 90, y, width: 432, height: 288 });

describe('survey: pages without a label', () => {
  it.each<[string, LayoutPage, Survey]>([
    ['nothing', pages.letter(), { kind: 'blank' }],
    ['a slip', slipPage(1), { kind: 'named', name: { kind: 'packing-slip', words: 'packing slip', heading: true } }],
    ['a slip with bars', slipPageWithBars(1), { kind: 'named', name: { kind: 'packing-slip', words: 'packing slip', heading: true } }],
    ['instructions', instructionsPage(), { kind: 'named', name: { kind: 'instructions', words: 'how to use', heading: true } }],
    [
      'a customs form',
      pages.letter(other(pages.customs(500, 400), 36, 36)),
      { kind: 'named', name: { kind: 'customs-form', words: 'customs declaration', heading: true } },
    ],
    [
      'a framed voucher with bars',
      pages.letter(other(pages.voucher(), 90, 440)),
      { kind: 'named', name: { kind: 'advert', words: 'voucher', heading: true } },
    ],
    [
      "a framed sender's copy with the parcel's bars",
      pages.letter(other(pages.senderCopy(pages.contentOf(3)), 90, 440)),
      { kind: 'named', name: { kind: 'receipt', words: "sender's copy", heading: true } },
    ],
    ['running text', pages.letter(other(pages.writing(), 36, 36)), { kind: 'unnamed', codes: false }],
    [
      'running text and small bars',
      pages.letter(other(pages.writing(), 36, 36), other(pages.bareBox(150, 90, 'MUGS-0001', 0.9, 40), 36, 300)),
      { kind: 'unnamed', codes: true },
    ],
  ])('with %s', async (_, page, expected) => {
    expect(await surveyOf(page)).toEqual(expected);
  });

  it.each([4, 6, 8])('a matrix code with modules of %i pt has no texture, but is seen', async (module) => {
    expect(await surveyOf(pages.letter(other(pages.matrixAlone(module), 50, 200)))).toEqual({ kind: 'unnamed', codes: true });
  });
});

describe('survey: pages with labels', () => {
  it('a label alone, with what a person can check', async () => {
    const seen = labelsOf(await surveyOf(pages.letter(pages.sidewaysLabel(1, 54))));
    expect(seen.labels).toHaveLength(1);
    expect(near(seen.labels[0]?.box as Box, sideways(54))).toBe(true);
    expect(seen.rest).toMatchObject({ name: undefined, returns: undefined, box: undefined });
    const evidence = seen.labels[0]?.evidence.join('; ');
    expect(evidence).toMatch(/^frame 6\.\d\d×4\.\d\d in around 2 codes; nothing else on the page; \d+ of its words are a label's; /);
    expect(evidence).toMatch(/(0\.\d\d ahead of the next answer \(.* in\)|no other answer)$/);
  });

  it('a slip beside a label: all of its ink, nothing of the label', async () => {
    const { labels, rest } = labelsOf(await surveyOf(pages.letter(pages.sidewaysLabel(1, 40), slip(pages.slipDrawing(1), 36, 414))));
    expect(rest.name).toEqual({ kind: 'packing-slip', words: 'packing slip', heading: true });
    expect(contains({ x: 36, y: 414, width: 540, height: 360 }, rest.box as Box)).toBe(true);
    expect(contains(rest.box as Box, { x: 55, y: 437, width: 500, height: 180 })).toBe(true);
    expect(intersection(rest.box as Box, labels[0]?.box as Box)).toBeUndefined();
  });

  it('a label that its size and words hardly show is not passed over for the slip beside it', async () => {
    const bare = other(pages.addressedMatrix('BX682434879094'), 40, 40);
    const page = pages.letter(bare, slip(pages.slipDrawing(1), 36, 414));
    expect(await surveyOf(page)).toMatchObject({
      kind: 'doubtful',
      why: expect.stringMatching(/has little of a label: one matrix code and no bars, /) as string,
    });
  });

  it('a matrix code below an address is held where the words of a label are missing: it may be one to show at a counter', async () => {
    const page = (...words: readonly string[]): LayoutPage => pages.letter(other(pages.addressedMatrix('BX682434879094', words), 40, 40));
    expect(await surveyOf(page('Ship to'))).toMatchObject({ kind: 'doubtful' });
    expect(await surveyOf(page('Ship to', 'Weight 2 lb', 'Tracking no.'))).toMatchObject({ kind: 'labels' });
  });

  it('two labels in reading order', async () => {
    const { labels } = labelsOf(
      await surveyOf({ width: 842, height: 595, regions: [pages.uprightLabel(2, 480, 60), pages.uprightLabel(1, 60, 66)] }),
    );
    expect(labels.map(({ box }) => Math.round(box.x / 60))).toEqual([1, 8]);
  });

  it('a slip about a label has no box of its own', async () => {
    const { labels, rest } = labelsOf(await surveyOf(pages.slipAround(1)));
    expect(labels).toHaveLength(1);
    expect(rest).toMatchObject({ name: { kind: 'packing-slip' }, box: undefined });
  });

  it.each([
    ["the label's number once more", other(pages.senderCopy(pages.contentOf(3)), 90, 440), 'receipt'],
    ['bars of its own', other(pages.voucher(), 90, 440), 'advert'],
    ['bars of its own, larger than the label', other(pages.voucher(540, 330), 36, 440), 'advert'],
  ] as const)('a framed paper beside it with %s is none', async (_, paper, kind) => {
    const { labels, rest } = labelsOf(await surveyOf(pages.letter(pages.sidewaysLabel(3, 40), paper)));
    expect(labels).toHaveLength(1);
    expect(near(labels[0]?.box as Box, sideways(40))).toBe(true);
    expect(rest.name?.kind).toBe(kind);
  });

  it.each([
    ['on it', true],
    ['beside it', false],
  ])('is a return label by words %s', async (_, on) => {
    const art = quillhaul(contentFor('survey return', 1, 'line'), { cutLine: true });
    if (on) art.text(200, 110, 'Return label', { size: 9 });
    const regions = [label(art, 60, 40), ...(on ? [] : [other(pages.lines(300, 40, ['Return label'], 16), 36, 560)])];
    const { labels } = labelsOf(await surveyOf(pages.letter(...regions)));
    expect(labels.map(({ returns }) => returns)).toEqual(['return label']);
  });

  it('words beside several labels make none of them a return label', async () => {
    const words = other(pages.lines(300, 40, ['Return label'], 16), 36, 540);
    const { labels, rest } = labelsOf(
      await surveyOf({ width: 842, height: 595, regions: [pages.uprightLabel(1, 60, 60), pages.uprightLabel(2, 480, 60), words] }),
    );
    expect(labels.map(({ returns }) => returns)).toEqual([undefined, undefined]);
    expect(rest.returns).toBe('return label');
  });
});

describe('survey: doubtful pages', () => {
  it('a box with bars but little of a label', async () => {
    const seen = await surveyOf(pages.letter(other(pages.bareBox(230, 300, 'BOX-17', 1.2, 22), 60, 60)));
    expect(seen).toMatchObject({
      kind: 'doubtful',
      why: expect.stringMatching(/^the frame .* in has little of a label: one row of bars, but no number as long as/) as string,
    });
    expect(seen.kind === 'doubtful' && seen.candidates).toHaveLength(1);
  });

  it.each([
    ['small bars among other words, as in a manual', pages.figureInWords()],
    ['bars in a coupon below other words', pages.couponInWords()],
  ])('%s', async (_, drawing) => {
    const seen = await surveyOf(pages.letter(other(drawing, 60, 60)));
    expect(seen).toMatchObject({ kind: 'doubtful', why: expect.stringMatching(/^no address stands on the ink /) as string });
  });

  it('a box with a number of its own beside a label: the label is sure, the box is not', async () => {
    const box = other(pages.bareBox(260, 240, '00340000123456789012', 1, 40), 90, 460);
    const title = other(pages.lines(300, 50, ['Packing slip'], 22), 90, 395);
    const { labels, doubts, rest } = labelsOf(await surveyOf(pages.letter(pages.sidewaysLabel(3, 40), title, box)));
    expect(labels.map((each) => near(each.box, sideways(40)))).toEqual([true]);
    expect(doubts).toMatchObject([{ why: expect.stringMatching(/ beside the label may be one, too$/) as string }]);
    expect(doubts[0]?.answers.map((each) => near(each.box, { x: 90, y: 460, width: 260, height: 240 }))).toEqual([true]);
    expect(rest.name?.kind).toBe('packing-slip');
  });

  // In words that the vocabulary has not: what else such pages have must tell.
  const PARCEL = [
    'Lumotar',
    'Officina Ficta',
    'Via Ficta 3',
    '00730 Nusquam',
    '',
    'Ines Exempla',
    'Via Ficta 12',
    '00731 Nusquam',
    'Exemplum, non valet',
  ];
  const GOODS = [
    'Officina Ficta',
    'Via Ficta 3',
    '00730 Nusquam',
    '',
    '2 x|Ampulla viridis',
    '1 x|Patera magna',
    '3 x|Cochlear',
    '',
    'Ines Exempla',
    'Via Ficta 12',
    '00731 Nusquam',
    'Exemplum, non valet',
  ];
  it.each<[string, readonly string[], string, Survey['kind']]>([
    ["a parcel's long number", PARCEL, 'LM35863805470450', 'labels'],
    ['a number as short as orders have', PARCEL, '1072326667', 'doubtful'],
    ['rows of goods, however long the number', GOODS, 'LM35863805470450', 'doubtful'],
  ])('paper of a roll with bars and unknown words: %s', async (_, text, number, kind) => {
    expect((await surveyOf(pages.onRoll(text, number))).kind).toBe(kind);
  });

  const [FROM, TO] = [PARCEL.slice(1, 4), PARCEL.slice(5)];
  it.each<[string, readonly string[], string, Survey['kind']]>([
    ["a parcel's long number", ['Lumotar', '2,1 kg', '1/1'], 'LM35863805470450', 'labels'],
    ['a number as short as orders have', ['Lumotar', '2,1 kg', '1/1'], '1072326667', 'doubtful'],
    ['lines of goods', ['2 x Ampulla viridis', '1 x Patera magna'], 'LM35863805470450', 'doubtful'],
  ])('a frame with both addresses, small bars and unknown words, alone or below what is no label: %s', async (_, words, number, kind) => {
    const box = (y: number) => other(pages.smallBarred(FROM, TO, words, number), 40, y);
    expect((await surveyOf(pages.letter(box(60)))).kind).toBe(kind);
    const title = other(pages.lines(500, 50, ['Packing slip'], 22), 40, 20);
    expect((await surveyOf(pages.letter(title, box(300)))).kind).toBe(kind);
  });

  it('the same below the title of a paper that no label is printed with', async () => {
    const box = other(pages.smallBarred(FROM, TO, ['Lumotar', '2,1 kg', '1/1'], 'LM35863805470450'), 40, 300);
    const below = (title: string) => surveyOf(pages.letter(other(pages.lines(500, 50, [title], 22), 40, 20), box));
    expect(await below('Damage claim')).toMatchObject({
      kind: 'doubtful',
      why: expect.stringMatching(/calls itself "damage claim"$/) as string,
    });
    expect((await below('Receipt')).kind).toBe('labels');
  });

  it("a bill's table with a number in bars beside a label is no doubt", async () => {
    const table = pages.lines(432, 288, ['2    Mug, celadon    36.00', '1    Bowl, tenmoku    31.00', 'Weight 2.1 kg'], 14);
    table.bars(code128('20311129-0042'), 216, 150, 1.4, 90);
    const { labels, doubts } = labelsOf(await surveyOf(pages.letter(pages.sidewaysLabel(3, 40), other(table, 36, 440))));
    expect(labels.map((each) => near(each.box, sideways(40)))).toEqual([true]);
    expect(doubts).toEqual([]);
  });

  it('a whole label with the number of the one beside it is held with it, never passed over as a copy', async () => {
    const survey = await surveyOf(pages.letter(pages.uprightLabel(3, 20, 12), pages.sidewaysLabel(3, 470)));
    expect(survey).toMatchObject({ kind: 'doubtful', why: expect.stringContaining('the number of the label beside it') as string });
  });

  it('what is as large as the label beside it, with a number of its own, and has what papers have is not said to have the number of that label', async () => {
    const remark = other(pages.lines(120, 14, ['Keep this sheet'], 8), 120, 400);
    const { labels, doubts } = labelsOf(await surveyOf(pages.letter(pages.uprightLabel(4, 20, 12), remark, pages.sidewaysLabel(3, 470))));
    expect(labels.map(({ box }) => near(box, sideways(470)))).toEqual([true]);
    expect(doubts.map(({ why }) => why)).toEqual([expect.stringMatching(/ beside the label may be one, too$/)]);
  });

  it('a receipt whose number stands on the page once more, larger, is not skipped: nobody knows where its label begins', async () => {
    const { postcode, serial } = pages.contentOf(3);
    const [receipt, bars] = [pages.senderCopy(pages.contentOf(3)), pages.lines(400, 150, [])];
    bars.bars(gs1Code128(['420', postcode], ['92', serial]), 200, 75, 1.4, 90);
    const page = (...more: readonly Parameters<typeof other>[]): LayoutPage =>
      pages.letter(other(receipt, 90, 440), ...more.map((each) => other(...each)));
    expect(await surveyOf(page())).toMatchObject({ kind: 'named', name: { kind: 'receipt' } });
    expect((await surveyOf(page([bars, 100, 100]))).kind).not.toBe('named');
  });

  it('a page is looked at once', async () => {
    const document = await openedPages([pages.letter()]);
    const page = document.page(1);
    const codes = async () => [];
    const seen = survey(page, MEDIA, codes);
    expect(survey(page, MEDIA, codes)).toBe(seen);
    await seen;
    document.close();
  });
});
