import type { Diagnostic } from '../../diagnostics/diagnostic.js';
import type { Media } from '../../geometry/media.js';
import { addPage, newDocument, saveDocument } from '../output.js';
import { askForTrueSize } from '../pdf-stream-writer.js';
import { pageOperators } from './block.js';
import { FONT } from '../type/draw-line.js';
import { ANY_HAN, hanOrder } from '../type/han.js';
import { ListFace } from './face.js';
import type { List } from './list.js';
import { measuresOf } from './measures.js';
import { pagesOf } from './pages.js';

export interface ListPdf {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** A warning where something is not printed as it was given. */
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * A list as a PDF of pages of `media`. The same list gives the same bytes; black only, for printers that know nothing else. A row stands whole on a
 * page (one that is higher than a page goes on between lines, and says so). Text in any script that slips are set in; what no typeface has is named
 * in brackets, with a warning.
 */
export async function listPdf(list: List, media: Media): Promise<ListPdf> {
  const document = await newDocument();
  const face = new ListFace(hanOrder(textsOf(list).join('\n'), ANY_HAN));
  const pages = pagesOf(list, measuresOf(media), face);
  const drawn = pages.map((page) => pageOperators(page, media.height, face));
  // Only now it is known which glyphs are in use.
  const font = face.font.embed(document.context);
  for (const operators of drawn) addPage(document, media, operators, { Font: { [FONT]: font } });
  askForTrueSize(document.catalog, document.context);
  const diagnostics = face.warnings.length > 0 ? [substituted(list, face.warnings)] : [];
  return { bytes: await saveDocument(document), pages: pages.length, diagnostics };
}

const textsOf = ({ sections }: List): readonly string[] =>
  sections.flatMap(({ heading, rows }) => [
    heading,
    ...rows.flatMap(({ cells }) => cells.flatMap((cell) => cell.flatMap((each) => ('tick' in each ? [] : each.text)))),
  ]);

/** Named at most this many. */
const NAMED = 5;

function substituted({ title }: List, warnings: readonly string[]): Diagnostic {
  const more = warnings.length - NAMED;
  return {
    code: 'press/substituted',
    severity: 'warning',
    message: `on the ${title.toLowerCase()}: ${warnings.slice(0, NAMED).join(' ')}${more > 0 ? ` And ${more} more.` : ''}`,
    place: { kind: 'run' },
  };
}
