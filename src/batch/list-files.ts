import type { Diagnostic } from '../diagnostics/diagnostic.js';
import { mediaNamed } from '../geometry/media.js';
import { csvText } from '../orders/csv.js';
import { handOvers, handOverTable } from '../orders/hand-over.js';
import { numberRanges } from '../orders/number-ranges.js';
import type { PackedParcel } from '../orders/packed-parcel.js';
import { pickRows, pickTable } from '../orders/pick-list.js';

/** A file of lists/. */
export interface ListFile {
  /** Name in lists/. */
  readonly name: string;
  readonly data: Uint8Array | string;
}

/** What a run's lists are called; nothing else is ever removed from lists/. */
export const LIST_NAMES: readonly string[] = ['pick-list.csv', 'pick-list.pdf', 'hand-over-list.csv', 'hand-over-list.pdf'];

/**
 * The pick list and the hand-over list of these parcels, as CSV and as PDF.
 * @param media name of what they are printed on
 * @param date as it is to be printed
 */
export async function listFiles(
  parcels: readonly PackedParcel[],
  media: string,
  date: string,
): Promise<{ readonly files: readonly ListFile[]; readonly diagnostics: readonly Diagnostic[] }> {
  const [{ listPdf }, { pickList }, { handOverList }] = await Promise.all([
    import('../press/lists/list-pdf.js'),
    import('../press/lists/pick-list.js'),
    import('../press/lists/hand-over-list.js'),
  ]);
  const rows = pickRows(parcels);
  const lines = rows.map(({ numbers, ...row }) => ({ ...row, parcels: numberRanges(numbers) }));
  const handed = handOvers(parcels);
  const page = mediaNamed(media);
  const pick = await listPdf(pickList(lines, { date, parcels: parcels.filter(({ orders }) => orders.length > 0).length }, page), page);
  const handOver = await listPdf(handOverList(handed, { date }, page), page);
  return {
    files: [
      { name: 'pick-list.csv', data: csvText(pickTable(rows)) },
      { name: 'pick-list.pdf', data: pick.bytes },
      { name: 'hand-over-list.csv', data: csvText(handOverTable(handed)) },
      { name: 'hand-over-list.pdf', data: handOver.bytes },
    ],
    diagnostics: [...pick.diagnostics, ...handOver.diagnostics],
  };
}
