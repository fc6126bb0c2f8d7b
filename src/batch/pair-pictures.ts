import type { Scratch } from '../files/scratch.js';
import { openPdf } from '../reading/open-pdf.js';
import { encodePng } from '../reading/png.js';
import type { GreyRaster } from '../reading/source.js';
import type { Reason } from '../sheet/sheet.js';
import type { Pair } from './duplicates.js';
import type { EndedDocument } from './work-through.js';

/** Fine enough to read an address: 100 dpi. */
const PIXELS_PER_PT = 100 / 72;
/** Grey between the two pages, pixels. */
const BETWEEN = 24;
const GREY = 160;

/** The documents with a picture for each label that is held beside another one: both as they would have been printed. */
export async function withPairPictures(
  documents: readonly EndedDocument[],
  pairs: readonly Pair[],
  scratch: Scratch,
): Promise<{ readonly documents: readonly EndedDocument[] } | { readonly reason: Reason }> {
  const added = new Map<number, EndedDocument['pictures']>();
  for (const { document, item, otherDocument, other } of pairs) {
    const left = await pageOf(documents[document], item.pressedPage, scratch);
    const right = await pageOf(documents[otherDocument], other.pressedPage, scratch);
    if (!left || !right) continue;
    const put = await scratch.put(await encodePng(sideBySide(left, right)));
    if (!put.ok) return { reason: put.reason };
    const known = added.get(document) ?? documents[document]?.pictures ?? new Map();
    added.set(document, new Map([...known, [item.id, put.kept]]));
  }
  return { documents: documents.map((each, index) => ({ ...each, pictures: added.get(index) ?? each.pictures })) };
}

async function pageOf(document: EndedDocument | undefined, page: number | undefined, scratch: Scratch): Promise<GreyRaster | undefined> {
  if (!document?.pressed || page === undefined) return undefined;
  const pdf = await openPdf(await scratch.get(document.pressed), { as: 'output' });
  if ('refused' in pdf) throw new Error(`duplicates: the press's own document does not open (${pdf.refused.code})`);
  try {
    const drawn = pdf.page(page);
    return drawn.render({ x: 0, y: 0, width: drawn.width, height: drawn.height }, PIXELS_PER_PT);
  } finally {
    pdf.close();
  }
}

function sideBySide(left: GreyRaster, right: GreyRaster): GreyRaster {
  const width = left.width + BETWEEN + right.width;
  const height = Math.max(left.height, right.height);
  const data = new Uint8Array(width * height).fill(GREY);
  const paste = (from: GreyRaster, x: number): void => {
    for (let y = 0; y < from.height; y++) data.set(from.data.subarray(y * from.width, (y + 1) * from.width), y * width + x);
  };
  paste(left, 0);
  paste(right, left.width + BETWEEN);
  return { ...left, width, height, data };
}
