import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import type { Media } from '../../geometry/media.js';
import { addPage, newDocument, saveDocument } from '../output.js';
import { askForTrueSize } from '../pdf-stream-writer.js';
import { pageOperators } from './block.js';
import { listFace } from './face.js';
import type { List } from './list.js';
import { measuresOf } from './measures.js';
import { pagesOf } from './pages.js';

export interface ListPdf {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** A warning where characters were printed as question marks. */
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * A list as a PDF of pages of `media`. The same list gives the same bytes; black only, for printers that know nothing else. A row stands whole on a
 * page (one that is higher than a page goes on between lines, and says so). Characters that the face lacks print as `?`, with a warning.
 */
export async function listPdf(list: List, media: Media): Promise<ListPdf> {
  const document = await newDocument();
  const face = await listFace(document, media.height);
  const pages = pagesOf(list, measuresOf(media), face);
  for (const page of pages) addPage(document, media, pageOperators(page, media.height, face), { Font: { [face.name]: face.ref } });
  askForTrueSize(document.catalog, document.context);
  return {
    bytes: await saveDocument(document),
    pages: pages.length,
    diagnostics: face.missing.size > 0 ? [lacking(list, face.missing)] : [],
  };
}

/** Named at most this many: the code points only, for the text around them may be a buyer's. */
const NAMED = 5;

function lacking({ title }: List, missing: ReadonlySet<string>): Diagnostic {
  const codes = [...missing].map((char) => `U+${(char.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`).sort();
  const named = `${codes.slice(0, NAMED).join(', ')}${codes.length > NAMED ? ` and ${codes.length - NAMED} more` : ''}`;
  return {
    code: 'press/missing-glyphs',
    severity: 'warning',
    message: `"${title}" prints ? where the font has no picture for a character: ${named}`,
    remedy: 'Look these rows up in your order file before you pack them.',
    place: { kind: 'run' },
  };
}
