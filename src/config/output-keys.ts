/* eslint-disable @typescript-eslint/no-confusing-void-expression -- a reader hands on the undefined that says "wrong, and reported" */
import { isMap, isScalar } from 'yaml';
import type { GridName } from '../geometry/grid.js';
import { inToPt } from '../geometry/length.js';
import { mediaNamed } from '../geometry/media.js';
import { ROLL, type Output } from '../geometry/printer.js';
import type { ConfigFile } from './config-file.js';
import { OUTPUT_KEYS } from './keys.js';
import { readMedia } from './option-value.js';
import { spanOf } from './parse-yaml.js';
import { readGrid, readPrinter } from './printer-keys.js';
import { readMap, wrongKind, type Entry } from './read-map.js';
import { readText, slotOf, wrongValue, type Slot } from './read-value.js';
import { tooManyDots } from './too-many-dots.js';
import { quote, useOneOf } from './words.js';

/** What a pipeline says of its other printers. */
export interface OutputsRead {
  /** As they stand there, those with mistakes too: a channel may name them without being told so. */
  readonly names: readonly string[];
  /** Those without mistakes, in the order of the file. */
  readonly outputs: readonly Output[];
}

const REMEDY = 'Write a name of your own for each printer, and below it what it takes: `office: { media: letter }`.';

/** Reads `outputs`; what is wrong with it is in the file's diagnostics. */
export function readOutputs(file: ConfigFile, entry: Entry | undefined): OutputsRead {
  const none: OutputsRead = { names: [], outputs: [] };
  if (!entry) return none;
  const { value, keySpan } = entry;
  if (!value) {
    file.error('config/missing-value', keySpan, '`outputs` has nothing behind its colon', REMEDY);
    return none;
  }
  if (!isMap(value)) {
    wrongKind(file, value, keySpan, '`outputs` is a map of names and printers', REMEDY);
    return none;
  }
  const names = value.items.flatMap(({ key }) => (isScalar(key) ? [typeof key.value === 'string' ? key.value : (key.source ?? '')] : []));
  const entries = readMap(file, value, keySpan, { what: '`outputs`', keys: names });
  const outputs: Output[] = [];
  for (const each of entries?.values() ?? []) {
    const output = isName(file, each, names) ? readOutput(file, each) : undefined;
    if (output) outputs.push(output);
  }
  return { names, outputs };
}

/** What can't stand in a file's name everywhere, and what would look like a path. */
const BAD_IN_NAME = /[/\\:*?"<>|\p{C}]/u;
const LONGEST_NAME = 40;

function isName(file: ConfigFile, { key, keySpan }: Entry, names: readonly string[]): boolean {
  const wrong = (message: string, remedy: string): false => {
    file.error('config/bad-value', keySpan, message, remedy);
    return false;
  };
  if (key.toLowerCase() === ROLL)
    return wrong(`${quote(key)} is the printer that \`media\` and the keys beside it speak of`, 'Give this one another name: `office`.');
  if (key.trim() === '' || key.length > LONGEST_NAME || BAD_IN_NAME.test(key) || key.startsWith('.'))
    return wrong(
      `${quote(key)} is no name for a printer: it stands in names of files`,
      `Use letters, digits and \`-\`, at most ${LONGEST_NAME} of them.`,
    );
  const other = names.find((name) => name !== key && name.toLowerCase() === key.toLowerCase());
  if (other === undefined || names.indexOf(key) < names.indexOf(other)) return true;
  return wrong(
    `two printers are named ${quote(other)} and ${quote(key)}`,
    'Give each a name of its own; small and large letters are the same.',
  );
}

/** Wider paper than this is an office printer's, pt. */
const LABEL_WIDTH = inToPt(6);
/** Where no grid is given: of an office printer (common practice), and of a label printer. */
const [OFFICE_GRID, LABEL_GRID] = ['300dpi', '203dpi'] as const;

/** The dots that are taken for an output's where it names none. */
export function defaultGridOf(media: string): GridName {
  const { width, height } = mediaNamed(media);
  return Math.min(width, height) >= LABEL_WIDTH ? OFFICE_GRID : LABEL_GRID;
}

function readOutput(file: ConfigFile, { key, keySpan, value }: Entry): Output | undefined {
  const entries = readMap(file, value, keySpan, { what: `the output ${quote(key)}`, keys: OUTPUT_KEYS, required: ['media'] });
  const mediaEntry = entries?.get('media');
  if (!entries || !mediaEntry) return undefined;
  const media = readMedia(slotOf(file, mediaEntry));
  const gridEntry = entries.get('grid');
  const grid = gridEntry ? readGrid(file, gridEntry) : media === undefined ? undefined : defaultGridOf(media);
  const printer = readPrinter(file, entries, media, grid);
  if (media === undefined || grid === undefined || !printer) return undefined;
  const tooMany = tooManyDots(media, grid);
  if (!tooMany) return { name: key, media, grid, printer };
  const at = (gridEntry ?? mediaEntry).value;
  file.error('config/too-many-dots', at ? spanOf(at) : keySpan, tooMany.message, tooMany.remedy);
  return undefined;
}

/** The name of an output; undefined when there is none of that name, which is then told with the nearest. */
export function readOutputName(slot: Slot, names: readonly string[]): string | undefined {
  const name = readText(slot, 'is the name of one of `outputs`', `${slot.name}: office`);
  if (name === undefined || names.includes(name)) return name;
  const { file, node, at } = slot;
  const others = names.filter((each) => each !== ROLL);
  const remedy =
    others.length === 0
      ? `Name the printer first, at the top of the pipeline: \`outputs: { ${/^[\p{L}\p{N}-]+$/u.test(name) ? name : 'office'}: { media: letter } }\`.`
      : useOneOf(name, names);
  file.error(
    'config/unknown-output',
    node ? spanOf(node) : at,
    `${quote(slot.name)} names ${quote(name)}, but there is no output of that name`,
    remedy,
  );
  return undefined;
}

/**
 * Which output takes pages that are too large for labels; undefined when that is wrong, and reported.
 * @param media of the labels; undefined when it is wrong
 */
export function readLargePages(slot: Slot, { names, outputs }: OutputsRead, media: string | undefined): string | undefined {
  const name = readOutputName(slot, names);
  const output = outputs.find((each) => each.name === name);
  if (name === undefined || !output || media === undefined) return name;
  const [own, large] = [mediaNamed(media), mediaNamed(output.media)];
  if (large.width * large.height > own.width * own.height) return name;
  const wants = `takes pages too large for ${quote(media)}`;
  return wrongValue(slot, wants, `Name an output with larger media than ${quote(output.media)}.`);
}
