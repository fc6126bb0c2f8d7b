import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { createWorker, OEM, PSM } from 'tesseract.js';

/** A line as it was read, pixels of the picture, origin top left. */
export interface ReadLine {
  readonly top: number;
  readonly bottom: number;
  readonly words: readonly ReadWord[];
}

export interface ReadWord {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  /** How sure the reader is, percent. */
  readonly sure: number;
}

type Reader = Awaited<ReturnType<typeof createWorker>>;
/** The thread that reads; not in the package's types. */
type Threaded = Reader & { readonly worker: { ref(): void; unref(): void } };

/** One reader a thread: its start costs as much as two pages. */
let reader: Promise<Threaded> | undefined;
/** Pictures are read one after the other: the resolution is set for each. */
let last: Promise<unknown> = Promise.resolve();

/**
 * Reads the upright words in a PNG. The reader is started once and kept, without keeping the process alive. The language data come with the program; nothing
 * is fetched.
 * @param dpi of the picture
 */
export function readLines(png: Uint8Array, dpi: number): Promise<readonly ReadLine[]> {
  const read = last.then(() => readNext(png, dpi));
  last = read.catch(() => undefined);
  return read;
}

async function readNext(png: Uint8Array, dpi: number): Promise<readonly ReadLine[]> {
  const open = await (reader ??= start());
  open.worker.ref();
  try {
    await open.setParameters({ tessedit_pageseg_mode: PSM.SPARSE_TEXT, user_defined_dpi: String(dpi), debug_file: '/dev/null' });
    const { data } = await open.recognize(Buffer.from(png), {}, { blocks: true, text: false });
    const lines = (data.blocks ?? []).flatMap(({ paragraphs }) => paragraphs.flatMap((each) => each.lines));
    return lines.map(({ bbox, words }) => ({
      top: bbox.y0,
      bottom: bbox.y1,
      words: words.map(({ text, bbox: { x0, x1 }, confidence }) => ({ text, left: x0, right: x1, sure: confidence })),
    }));
  } finally {
    open.worker.unref();
  }
}

const start = async (): Promise<Threaded> =>
  (await createWorker('eng', OEM.LSTM_ONLY, {
    langPath: join(dirname(createRequire(import.meta.url).resolve('@tesseract.js-data/eng/package.json')), '4.0.0_best_int'),
    cacheMethod: 'none',
    gzip: true,
    errorHandler: () => undefined,
  })) as Threaded;
