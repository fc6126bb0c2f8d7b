import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { createWorker, OEM, PSM } from 'tesseract.js';
import type { Box } from '../geometry/box.js';
import { TURNS, type Turn } from '../geometry/placement.js';
import { INK_LEVEL } from './ink.js';
import { encodePng } from './png.js';
import type { GreyRaster } from './source.js';

/** A word counts when it is read this surely (percent) and has three letters in a row: bars and rules give short nonsense. */
const SURE = 60;
const LETTERS = /\p{L}{3,}/u;

/**
 * Reads the words in a raster in each of the four turns and gives the characters of those that were read surely, by the clockwise
 * turn that the raster was given. `blank` (pt on the source page) is whitened first: what is no writing. Takes seconds; for where nothing
 * else tells which way is up. The language data come with the program; nothing is fetched.
 */
export async function charactersByTurn(raster: GreyRaster, blank: readonly Box[]): Promise<ReadonlyMap<Turn, number>> {
  const white = whitened(raster, blank);
  if (!white.data.some((grey) => grey < INK_LEVEL)) return new Map(TURNS.map((turn) => [turn, 0]));
  const reader = await createWorker('eng', OEM.LSTM_ONLY, {
    langPath: join(dirname(createRequire(import.meta.url).resolve('@tesseract.js-data/eng/package.json')), '4.0.0_best_int'),
    cacheMethod: 'none',
    gzip: true,
    errorHandler: () => undefined,
  });
  try {
    await reader.setParameters({
      tessedit_pageseg_mode: PSM.SPARSE_TEXT,
      user_defined_dpi: String(Math.round(72 * raster.pixelsPerPt)),
      debug_file: '/dev/null',
    });
    const characters = new Map<Turn, number>();
    for (const turn of TURNS) {
      const png = await encodePng(turned(white, turn));
      const { data } = await reader.recognize(Buffer.from(png), {}, { blocks: true, text: false });
      const words = (data.blocks ?? []).flatMap(({ paragraphs }) => paragraphs.flatMap(({ lines }) => lines.flatMap((line) => line.words)));
      const sure = words.filter(({ confidence, text }) => confidence >= SURE && LETTERS.test(text));
      characters.set(
        turn,
        sure.reduce((sum, { text }) => sum + text.length, 0),
      );
    }
    return characters;
  } finally {
    await reader.terminate();
  }
}

function whitened(raster: GreyRaster, boxes: readonly Box[]): GreyRaster {
  const { width, height, pixelsPerPt: k, origin } = raster;
  const data = raster.data.slice();
  for (const box of boxes) {
    const x0 = Math.max(0, Math.floor((box.x - origin.x) * k));
    const x1 = Math.min(width, Math.ceil((box.x + box.width - origin.x) * k));
    const y1 = Math.min(height, Math.ceil((box.y + box.height - origin.y) * k));
    for (let y = Math.max(0, Math.floor((box.y - origin.y) * k)); y < y1; y++) if (x1 > x0) data.fill(255, y * width + x0, y * width + x1);
  }
  return { ...raster, data };
}

/** The raster turned clockwise; its place on the page is of no meaning then. */
function turned(raster: GreyRaster, turn: Turn): GreyRaster {
  if (turn === 0) return raster;
  const { width, height, data } = raster;
  const [w, h] = turn === 180 ? [width, height] : [height, width];
  const out = new Uint8Array(data.length);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = turn === 90 ? x * w + (w - 1 - y) : turn === 180 ? (h - 1 - y) * w + (w - 1 - x) : (h - 1 - x) * w + y;
      out[at] = data[y * width + x] as number;
    }
  }
  return { ...raster, width: w, height: h, data: out };
}
