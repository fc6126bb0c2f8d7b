/* eslint-disable @typescript-eslint/no-confusing-void-expression -- a reader hands on the undefined that says "wrong, and reported" */
import { isSeq } from 'yaml';
import { GRID_NAMES, gridOf, twinOf, type GridName } from '../geometry/grid.js';
import { lengthToPt, type Length } from '../geometry/length.js';
import { mediaNamed } from '../geometry/media.js';
import { OUTPUT_KINDS, PLAIN_PRINTER, printableArea, type OutputKind, type PrinterSetup } from '../geometry/printer.js';
import type { ConfigFile } from './config-file.js';
import { readLength, wrongList } from './option-value.js';
import { spanOf } from './parse-yaml.js';
import { presence, type Entry } from './read-map.js';
import { readChoice, slotOf, wrongValue, type Slot } from './read-value.js';
import { quote } from './words.js';

/** The dots of a printer, with their unit. */
export function readGrid(file: ConfigFile, entry: Entry): GridName | undefined {
  const slot = slotOf(file, entry);
  const word = entry.value
    ? file
        .textOf(spanOf(entry.value))
        .replaceAll(/["'\s]/g, '')
        .toLowerCase()
    : '';
  const number = /^(\d+)(?:\.\d+)?(?:dpi|dots\/mm|dpmm)?$/.exec(word)?.[1];
  const meant = number === undefined ? undefined : GRID_NAMES.find((name) => name.startsWith(`${number}d`));
  if (meant !== undefined && meant !== word)
    return wrongValue(slot, "is the printer's resolution with its unit", `Write ${quote(meant)}.`, 'config/bad-unit');
  return readChoice(slot, GRID_NAMES) as GridName | undefined;
}

const NOTHING: Length = { value: 0, unit: 'mm' };
/** An offset is a printer's small fault: more than this is a slip of the pen, pt (20 mm). */
const FARTHEST = 57;

/**
 * Reads what a pipeline says of its printer; undefined when any of it is wrong, which is then in the file's diagnostics.
 * @param media and `grid`: what was read before; undefined when it was wrong
 */
export function readPrinter(
  file: ConfigFile,
  entries: ReadonlyMap<string, Entry>,
  media: string | undefined,
  grid: GridName | undefined,
): PrinterSetup | undefined {
  const toPt = (length: Length): number => lengthToPt(length, gridOf(grid ?? '203dpi'));
  const read = <T>(key: string, reader: (slot: Slot) => T | undefined, fallback: T): T | undefined => {
    const entry = entries.get(key);
    return entry ? reader(slotOf(file, entry)) : fallback;
  };
  const output = read<string>('output', (slot) => readChoice(slot, OUTPUT_KINDS), PLAIN_PRINTER.output) as OutputKind | undefined;
  const width = read<Length | undefined>('print-width', readPrintWidth, undefined);
  const margins = read('margins', readMargins, [NOTHING, NOTHING, NOTHING, NOTHING]);
  const offset = read('offset', (slot) => readOffset(slot, toPt), [NOTHING, NOTHING]);
  if (output === undefined || margins === undefined || offset === undefined) return undefined;
  if (entries.has('print-width') && width === undefined) return undefined;
  const [top = 0, right = 0, bottom = 0, left = 0] = margins.map(toPt);
  const [x = 0, y = 0] = offset.map(toPt);
  const printer = { output, printWidth: width && toPt(width), margins: { top, right, bottom, left }, offset: { x, y } };
  if (media !== undefined && printableArea(printer, mediaNamed(media)) === undefined) {
    const entry = entries.get('margins') ?? entries.get('print-width');
    const what = `leave nothing of a page of \`${media}\` to print on`;
    return entry ? wrongList(slotOf(file, entry), what, 'Write smaller `margins`: `margins: 2mm`.') : undefined;
  }
  if (output === 'pwg-raster' && grid !== undefined && !Number.isInteger(gridOf(grid).dpi)) {
    const entry = entries.get('output');
    const remedy = `Write \`grid: ${twinOf(grid)}\`, or \`output: dots\`.`;
    return (
      entry && wrongList(slotOf(file, entry), `is \`pwg-raster\`, which knows only whole dots an inch, and \`grid\` is \`${grid}\``, remedy)
    );
  }
  return printer;
}

const SOME: Length = { value: 1, unit: 'in' };

const readPrintWidth = (slot: Slot): Length | undefined => readLength(slot, SOME);

/** One length for all four sides, or four: top, right, bottom, left. */
function readMargins(slot: Slot): readonly Length[] | undefined {
  const remedy = 'Write one length, `2mm`, or four from the top clockwise: `[2mm, 1mm, 2mm, 1mm]`.';
  if (!slot.node || !isSeq(slot.node)) {
    const all = readLength(slot, NOTHING);
    return all && [all, all, all, all];
  }
  return readLengths(slot, 4, NOTHING, 'has one length or four (top, right, bottom, left)', remedy);
}

/** To the right, and down. */
function readOffset(slot: Slot, toPt: (length: Length) => number): readonly Length[] | undefined {
  const remedy = 'Write how far to the right and how far down: `[1mm, -0.5mm]`.';
  const lengths = readLengths(slot, 2, undefined, 'has two lengths (to the right, down)', remedy);
  if (lengths?.some((length) => Math.abs(toPt(length)) > FARTHEST) === true) {
    return wrongList(slot, 'moves everything by more than 20 mm', remedy);
  }
  return lengths;
}

function readLengths(slot: Slot, count: number, min: Length | undefined, what: string, remedy: string): readonly Length[] | undefined {
  const { node } = slot;
  if (!node || !isSeq(node) || node.items.length !== count) return wrongList(slot, what, remedy);
  const lengths = node.items.map((item) => readLength({ ...slot, node: presence(item), at: spanOf(node) }, min));
  return lengths.every((length) => length !== undefined) ? lengths : undefined;
}
