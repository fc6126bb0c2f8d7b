import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, describe, expect, it } from 'vitest';
import { lastingFilesIn, temporaryFolder, write } from '../batch/inbox.js';
import { runBuilt, type Ended } from '../built.js';
import { contentFor } from '../samples/content.js';
import { gs1CheckDigit } from '../samples/code-art.js';
import { bramblerun } from '../samples/labels/bramblerun.js';
import { quillhaul } from '../samples/labels/quillhaul.js';
import { label, layout, LETTER, slip, type LayoutPage } from '../samples/layout.js';
import { packingSlip } from '../samples/other-pages.js';
import { resaved } from '../samples/resaved.js';
import { sample, type Kind } from '../samples/sample.js';
import { pipelineFile } from './inbox.js';

interface Recorded {
  readonly account: {
    readonly items: Record<string, unknown>;
    readonly output: { readonly readyItems: number; readonly stackPages: number };
  };
  readonly documents: readonly {
    readonly name: string;
    readonly items: readonly {
      readonly role: string;
      readonly state: string;
      readonly reason?: { readonly code: string; readonly message: string };
      readonly held?: { readonly picture?: string };
    }[];
  }[];
}

const ORDER = contentFor('duplicates');
const PICTURE = contentFor('duplicates picture', 1);
const PARCEL = contentFor('duplicates parcel', 2);
const otherSscc = (sscc: string): string => {
  const body = `${sscc.slice(0, 10)}${sscc[10] === '1' ? '2' : '1'}${sscc.slice(11, 17)}`;
  return body + gs1CheckDigit(body);
};
const SECOND_PARCEL = { ...PARCEL, sscc: otherSscc(PARCEL.sscc) };

const drawn = async (name: string, pages: () => readonly LayoutPage[], kind: Kind = 'vector', traits: readonly 'picture-file'[] = []) =>
  (await sample(layout({ name, about: name, traits, pages }), kind, 0)).bytes;
const onRoll = (art: ReturnType<typeof quillhaul>): LayoutPage => ({ width: 288, height: 432, regions: [label(art, 0, 0)] });
const slipOf = (content: typeof ORDER): LayoutPage => ({ ...LETTER, regions: [slip(packingSlip(540, 400, content), 36, 36)] });

const folder = temporaryFolder();
let ended: Ended;
let record: Recorded;

const itemsOf = (name: string): Recorded['documents'][number]['items'] => record.documents.find((each) => each.name === name)?.items ?? [];
/** How the items of a file ended, in words. */
const ends = (name: string): readonly string[] =>
  itemsOf(name).map(({ role, state, reason }) => [role, state, ...(reason ? [reason.code] : [])].join(' '));

beforeAll(async () => {
  const withSlip = await drawn('with slip', () => [onRoll(quillhaul(ORDER)), slipOf(ORDER)]);
  write(join(folder, 'rolls/order 1.pdf'), withSlip);
  write(join(folder, 'rolls/order 1 (1).pdf'), await resaved(withSlip));
  write(join(folder, 'rolls/order 1 (2).pdf'), withSlip);
  write(
    join(folder, 'rolls/order 1 new slip.pdf'),
    await drawn('new slip', () => [onRoll(quillhaul(ORDER)), slipOf({ ...ORDER, items: ['1 x Another thing entirely', ...ORDER.items] })]),
  );
  const picture = (): readonly LayoutPage[] => [onRoll(bramblerun(PICTURE))];
  write(join(folder, 'shots/picture.pdf'), await drawn('picture', picture));
  write(join(folder, 'shots/picture.png'), await drawn('picture', picture, 'bilevel', ['picture-file']));
  const parcels = (): readonly LayoutPage[] => [PARCEL, SECOND_PARCEL, PARCEL].flatMap((each) => [onRoll(quillhaul(each)), slipOf(each)]);
  write(join(folder, 'rolls/two parcels.pdf'), await drawn('parcels', parcels));
  pipelineFile(folder, ['rolls', 'rolls/*', 'label-then-slip'], ['shots', 'shots/*', 'label-pages']);
  ended = await run('out', 1);
  record = JSON.parse(readFileSync(join(folder, 'out/run.json'), 'utf8')) as Recorded;
}, 240_000);

const run = (out: string, jobs: number): Promise<Ended> =>
  runBuilt(['run', '--config', 'pipeline.yaml', '--out', out, '--jobs', String(jobs), '--no-color'], folder);

describe('labels that are in a run more than once', () => {
  it('makes a label once with its slip, and names the second by its file and page', () => {
    expect(ends('rolls/order 1.pdf')).toEqual(['label ready', 'slip ready']);
    expect(ends('rolls/order 1 (1).pdf')).toEqual(['label skipped batch/duplicate', 'slip skipped batch/duplicate']);
    expect(itemsOf('rolls/order 1 (1).pdf')[0]?.reason?.message).toBe('the same as rolls/order 1.pdf, page 1, which is made once');
    // Equal byte for byte: never opened.
    expect(ends('rolls/order 1 (2).pdf')).toEqual(['page skipped intake/duplicate']);
  });

  it('holds a slip that the first one does not have', () => {
    expect(ends('rolls/order 1 new slip.pdf')).toEqual(['label skipped batch/duplicate', 'slip held batch/other-slip']);
    expect(itemsOf('rolls/order 1 new slip.pdf')[1]?.held?.picture).toMatch(/\.png$/);
  });

  it('makes two parcels that share their routing code, and the first of them not again in the same document', () => {
    expect(ends('rolls/two parcels.pdf')).toEqual([
      'label ready',
      'slip ready',
      'label ready',
      'slip ready',
      'label skipped batch/duplicate',
      'slip skipped batch/duplicate',
    ]);
  });

  it('prints neither the PDF nor the PNG of one label, and shows both side by side under their names', async () => {
    expect(ends('shots/picture.pdf')).toEqual(['label held batch/same-tracking-code']);
    expect(ends('shots/picture.png')).toEqual(['label held batch/same-tracking-code']);
    const pictures = ['shots/picture.pdf', 'shots/picture.png'].map((name) => join(folder, 'out', itemsOf(name)[0]?.held?.picture ?? ''));
    const [left, right] = await Promise.all(pictures.map(halves));
    // 4 × 6 in at 100 dpi with a strip for the name, twice, and the space between.
    expect(left?.size).toEqual([400 + 24 + 400, 25 + 600]);
    expect(right?.size).toEqual(left?.size);
    expect(left?.halves.map((half) => half.equals(right?.halves[0] ?? Buffer.of()))).toEqual([false, true]);
    expect(right?.halves.map((half) => half.equals(left?.halves[0] ?? Buffer.of()))).toEqual([false, true]);
  });

  it('adds up, ends with 1, and tells no whole number', () => {
    expect(ended.code, ended.stderr).toBe(1);
    expect(record.account).toMatchObject({
      items: { ready: 6, held: 3, skipped: 6, failed: 0 },
      output: { readyItems: 6, stackPages: 6 },
    });
    const files = ['run.json', 'log.jsonl'].map((name) => readFileSync(join(folder, 'out', name), 'utf8'));
    for (const text of [...files, ended.stdout, ended.stderr]) {
      for (const { serial, sscc } of [ORDER, PICTURE, PARCEL, SECOND_PARCEL]) {
        expect(text.includes(serial.slice(0, 10))).toBe(false);
        expect(text.includes(sscc.slice(0, 12))).toBe(false);
      }
    }
  });

  // One, two and eight: test/batch/run-batch.
  it('comes to the same bytes for 1 and 3 jobs', { timeout: 240_000 }, async () => {
    expect((await run('out-3', 3)).code).toBe(1);
    expect(lastingFilesIn(join(folder, 'out-3'))).toEqual(lastingFilesIn(join(folder, 'out')));
  });
});

/** The size of a picture of two pages, and the pixels of each. */
async function halves(path: string): Promise<{ readonly size: readonly number[]; readonly halves: readonly Buffer[] }> {
  const { width, height } = await sharp(path).metadata();
  const half = (x: number): Promise<Buffer> => sharp(path).extract({ left: x, top: 0, width: 400, height }).raw().toBuffer();
  return { size: [width, height], halves: [await half(0), await half(width - 400)] };
}
