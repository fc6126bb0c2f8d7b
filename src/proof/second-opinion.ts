import { grow, intersection, type Box } from '../geometry/box.js';
import { dotsPerPt, gridOf, type Grid } from '../geometry/grid.js';
import { mmToPt } from '../geometry/length.js';
import { LINEAR, readCodes } from '../reading/codes.js';
import { drawRisks, type DrawRisk } from '../reading/draw-risk.js';
import { finderOf, readMaxiCode } from '../reading/maxicode.js';
import { addCodes, mostPixelsPerPt } from '../reading/page-codes.js';
import { openSecond, type NotDrawn, type SecondDocument } from '../reading/second-engine.js';
import type { Code, GreyRaster, SourceDocument, SourcePage, Symbology } from '../reading/source.js';
import type { Reason } from '../sheet/sheet.js';
import { compareDrawings } from './compare-drawings.js';

export const SECOND_OPINION_MODES = ['never', 'at-risk', 'always'] as const;
/** When a page is drawn by a second engine too; `at-risk`: where it holds what engines draw differently. */
export type SecondOpinionMode = (typeof SECOND_OPINION_MODES)[number];

/** Both drawings of one region, for people to compare. */
export interface Drawings {
  readonly first: GreyRaster;
  readonly second: GreyRaster;
}

export type SecondOpinion =
  | { readonly kind: 'not-asked' }
  | { readonly kind: 'alike'; readonly risks: readonly DrawRisk[] }
  | {
      readonly kind: 'differs';
      readonly risks: readonly DrawRisk[];
      /** Where ink or greys differ, pt on the page; empty when only codes do. */
      readonly where: readonly Box[];
      /** Share of the ink that one drawing has and the other hasn't, 0 to 1. */
      readonly share: number;
      /** Codes that can be read from one drawing alone. */
      readonly codes: readonly Code[];
      readonly drawings: Drawings;
    }
  /** `why`: the end of a sentence about the second engine. */
  | { readonly kind: 'not-drawn'; readonly risks: readonly DrawRisk[]; readonly why: string };

/** Finer drawings show no more differences and cost more. */
const FINEST = dotsPerPt(gridOf('300dpi'));
/** Quiet zones, pt (4 mm). */
const AROUND = mmToPt(4);

/**
 * A second engine's view of one document's pages. It is loaded and the document opened in it only when the first page is asked about; a
 * source that is a picture has one decoder and is never asked about.
 */
export class SecondOpinions {
  readonly #source: SourceDocument;
  readonly #bytes: Uint8Array;
  readonly #mode: SecondOpinionMode;
  readonly #grid: Grid;
  #opened: Promise<SecondDocument | NotDrawn> | undefined;

  /** @param bytes the document as it was given */
  constructor(source: SourceDocument, bytes: Uint8Array, mode: SecondOpinionMode, grid: Grid) {
    this.#source = source;
    this.#bytes = bytes;
    this.#mode = mode;
    this.#grid = grid;
  }

  /** @param number page, from 1. @param region pt on the visible page */
  async about(number: number, region: Box): Promise<SecondOpinion> {
    if (this.#mode === 'never') return { kind: 'not-asked' };
    const given = this.#source.pressSource(number);
    if (given.kind === 'picture') return { kind: 'not-asked' };
    const risks = drawRisks(given, number);
    if (risks.length === 0 && this.#mode === 'at-risk') return { kind: 'not-asked' };
    const opened = await (this.#opened ??= openSecond(this.#bytes));
    if ('notDrawn' in opened) return { kind: 'not-drawn', risks, why: opened.notDrawn };
    return this.#compare(this.#source.page(number), region, risks, opened);
  }

  async close(): Promise<void> {
    const opened = await this.#opened;
    this.#opened = undefined;
    if (opened && !('notDrawn' in opened)) await opened.close();
  }

  async #compare(page: SourcePage, region: Box, risks: readonly DrawRisk[], document: SecondDocument): Promise<SecondOpinion> {
    const pixelsPerPt = Math.min(dotsPerPt(this.#grid), FINEST, mostPixelsPerPt(region));
    const first = page.render(region, pixelsPerPt);
    const second = await document.draw(page, region, pixelsPerPt);
    if ('notDrawn' in second) return { kind: 'not-drawn', risks, why: second.notDrawn };
    const { where, share } = compareDrawings(first, second);
    const codes = await differingCodes(page, region, second, document);
    if (where.length === 0 && codes.length === 0) return { kind: 'alike', risks };
    return { kind: 'differs', risks, where, share, codes, drawings: { first, second } };
  }
}

/** Codes of the page that the second drawing hasn't, and of the second drawing that the page hasn't, each after a thorough second look. */
async function differingCodes(page: SourcePage, region: Box, second: GreyRaster, document: SecondDocument): Promise<readonly Code[]> {
  const expected = await page.codes(region, second.pixelsPerPt);
  const found = [...(await readAll(second, expected))];
  let missing = without(expected, found);
  for (const code of missing) addCodes(found, await readThere(page, region, code, document));
  missing = without(expected, found);
  let extra = without(found, expected);
  if (extra.length > 0) {
    const seen = await page.codes(region, second.pixelsPerPt, { thorough: true });
    extra = without(extra, without(seen, expected));
  }
  return [...missing, ...extra];
}

/** Reads a drawing in all turns: bars, and what else is known to be there or could be overlooked. */
function readAll(raster: GreyRaster, expected: readonly Code[]): Promise<readonly Code[]> {
  const all: Symbology[] = [...LINEAR, 'QR', 'Data Matrix', ...expected.map(({ symbology }) => symbology)];
  return readCodes(raster, { symbologies: [...new Set(all)].filter((each) => each !== 'MaxiCode') });
}

/** Looks for a code at its very place, as finely as the picture that may hold it, and by every means. */
async function readThere(page: SourcePage, region: Box, code: Code, document: SecondDocument): Promise<readonly Code[]> {
  const area = intersection(grow(code.box, AROUND), region) ?? region;
  const fine = Math.min(Math.max(FINEST, page.pictureUnder(area)?.pixelsPerPt ?? 0), mostPixelsPerPt(area));
  const raster = await document.draw(page, area, fine);
  if ('notDrawn' in raster) return [];
  if (code.symbology === 'MaxiCode') {
    const read = await readMaxiCode(raster, finderOf(code));
    return read ? [read] : [];
  }
  const symbologies = [code.symbology];
  const plain = await readCodes(raster, { symbologies });
  return plain.length > 0 ? plain : readCodes(raster, { symbologies, thorough: true });
}

/** Those of `codes` for which `others` has no equal, each equal counting once. */
function without(codes: readonly Code[], others: readonly Code[]): Code[] {
  const free = new Set(others);
  return codes.filter((code) => {
    const equal = [...free].find((other) => other.identifier === code.identifier && other.bytes === code.bytes);
    if (equal) free.delete(equal);
    return equal === undefined;
  });
}

/** Why a sheet is to be held for what the second engine saw; undefined when it is not. */
export function reasonOf(opinion: SecondOpinion): Reason | undefined {
  if (opinion.kind === 'not-drawn') {
    return {
      code: 'verify/second-not-drawn',
      message: `the page holds what engines draw differently${because(opinion.risks)}, and the second engine could not draw it: ${opinion.why}`,
      remedy: OTHER_PDF,
    };
  }
  if (opinion.kind !== 'differs') return undefined;
  const { where, codes, risks } = opinion;
  const places = where.length > 0 ? [`in ${where.length} ${where.length === 1 ? 'place' : 'places'}`] : [];
  const unread = codes.length > 0 ? [`in ${codes.length} ${codes.length === 1 ? 'code' : 'codes'}`] : [];
  return {
    code: 'verify/engines-differ',
    message: `two engines draw it differently ${[...places, ...unread].join(' and ')}${because(risks)}; the printer's own may differ again`,
    remedy: `Compare the two pictures with the document in a viewer. ${OTHER_PDF}`,
  };
}

const because = (risks: readonly DrawRisk[]): string => (risks.length > 0 ? ` (${risks.join(', ')})` : '');

const OTHER_PDF = 'Open the document in a viewer where it looks right, print it to a new PDF there, and use that one.';
