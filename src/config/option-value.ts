/* eslint-disable @typescript-eslint/no-confusing-void-expression -- a reader hands on the undefined that says "wrong, and reported" */
import { isSeq } from 'yaml';
import { gridOf } from '../geometry/grid.js';
import { lengthToPt, parseLength, type Length } from '../geometry/length.js';
import { isPage, MEDIA_NAMES, PAGE_RANGE, parseMedia } from '../geometry/media.js';
import type { BoxLengths, OptionKind } from '../steps/option.js';
import { isPagesPattern } from '../steps/pages.js';
import { lengthRemedy } from './length-remedy.js';
import { spanOf } from './parse-yaml.js';
import { presence } from './read-map.js';
import { readBoolean, readChoice, readInteger, readOneOrMore, readText, wordOf, wrongValue, type Slot } from './read-value.js';
import { quote, useOneOf } from './words.js';

/** Reads a value of a declared option; undefined when it is wrong, which is then in the file's diagnostics. */
export function readOptionValue(slot: Slot, kind: OptionKind): unknown {
  switch (kind.kind) {
    case 'choice':
      return readChoice(slot, kind.values);
    case 'choices':
      return readChoices(slot, kind.values);
    case 'length':
      return readLength(slot, kind.min);
    case 'box':
      return readBox(slot);
    case 'percent':
      return readPercent(slot, kind.min, kind.max);
    case 'integer':
      return readInteger(slot, kind.min, kind.max);
    case 'boolean':
      return readBoolean(slot);
    case 'phrases':
      return readPhrases(slot);
    case 'pages':
      return readPages(slot);
    case 'media':
      return readMedia(slot);
  }
}

/** An empty list takes back what a recipe says. */
function readPhrases(slot: Slot): readonly string[] | undefined {
  if (slot.node && isSeq(slot.node) && slot.node.items.length === 0) return [];
  const wants = 'is a list of phrases';
  return readOneOrMore(slot, wants, `${slot.name}: ['packing slip', 'return to']`, (item) => readText(item, wants, `'packing slip'`));
}

function readChoices(slot: Slot, values: readonly string[]): readonly string[] | undefined {
  const example = `${slot.name}: [${values.slice(0, 2).join(', ')}]`;
  const words = readOneOrMore(slot, 'is a word, or a list of words to try in order', example, (item) => readChoice(item, values));
  const twice = words?.find((word, index) => words.indexOf(word) < index);
  return twice === undefined ? words : wrongList(slot, `names ${quote(twice)} twice`, 'Name it once.');
}

export const wrongList = ({ file, node, at, name }: Slot, what: string, remedy: string): undefined => {
  file.error('config/bad-value', node ? spanOf(node) : at, `${quote(name)} ${what}`, remedy);
  return undefined;
};

export function readLength(slot: Slot, min?: Length): Length | undefined {
  const word = wordOf(slot);
  const length = word === undefined ? undefined : parseLength(word);
  if (!length) return wrongValue(slot, 'is a length with its unit', lengthRemedy(word ?? ''), 'config/bad-unit');
  // Dots are those of the coarsest grid: a limit is a matter of sense, not of a dot.
  const pt = (each: Length): number => lengthToPt(each, gridOf('203dpi'));
  if (min === undefined || pt(length) >= pt(min) - 1e-9) return length;
  return wrongValue(slot, `is at least ${min.value}${min.unit}`, `Write ${quote(`${min.value}${min.unit}`)} or more.`);
}

function readBox(slot: Slot): BoxLengths | undefined {
  const { file, name, node } = slot;
  const wants = 'is a box `[x, y, width, height]`';
  const remedy = 'Write four lengths, measured from the top left corner of the page: `[10mm, 10mm, 4in, 6in]`.';
  if (!node || !isSeq(node)) return wrongValue(slot, wants, remedy);
  if (node.items.length !== 4) return wrongList(slot, `has four lengths (x, y, width, height), not ${node.items.length}`, remedy);
  const lengths = node.items.map((item) => readLength({ file, name, node: presence(item), at: spanOf(node) }));
  const [x, y, width, height] = lengths;
  if (!x || !y || !width || !height) return undefined;
  if (width.value <= 0 || height.value <= 0) return wrongList(slot, 'has no area: width and height come last', remedy);
  return [x, y, width, height];
}

function readPercent(slot: Slot, min: number, max: number): number | undefined {
  const word = wordOf(slot);
  const percent = (factor: number): string => `${+(factor * 100).toFixed(2)}%`;
  const wants = `is a percentage from ${percent(min)} to ${percent(max)}`;
  if (word === undefined) return wrongValue(slot, wants, `Write it as ${quote(percent(max))}.`);
  const match = /^(\d+(?:\.\d+)?)\s*%$/.exec(word);
  if (!match) {
    const bare = Number(word.replace(',', '.').replace(/\s*%$/, ''));
    const meant = word === '' || !Number.isFinite(bare) || bare <= 0 ? max : bare <= 1 ? bare : bare / 100;
    return wrongValue(slot, wants, `Write it as ${quote(percent(Math.min(max, Math.max(min, meant))))}.`, 'config/bad-unit');
  }
  const factor = Number(match[1]) / 100;
  return factor < min - 1e-9 || factor > max + 1e-9
    ? wrongValue(slot, wants, `Write a value from ${percent(min)} to ${percent(max)}.`)
    : factor;
}

const PAGE_WORDS = ['every', 'none', 'odd', 'even', 'first', 'last'] as const;

function readPages(slot: Slot): string | undefined {
  const word = wordOf(slot);
  if (word !== undefined && isPagesPattern(word)) return word.replaceAll(/\s+/g, '');
  const wants = 'says which pages: `every`, `none`, `odd`, `even`, `first`, `last`, or numbers such as `2`, `2-` and `1,3,5-7`';
  if (slot.node && isSeq(slot.node)) return wrongValue(slot, wants, 'Write the pages as one text: `1,3,5-7`.');
  if (word === undefined || /^[\d\s,-]+$/.test(word))
    return wrongValue(slot, wants, 'Pages count from 1, the smaller number first: `2-4`.');
  return wrongValue(slot, wants, word === 'all' ? 'Write `every`.' : useOneOf(word, PAGE_WORDS));
}

/** A media name or size: of an option, and of the pipeline itself. */
export function readMedia(slot: Slot): string | undefined {
  const word = wordOf(slot);
  const media = word === undefined ? undefined : parseMedia(word);
  const wants = 'is a page size such as `4x6in`, `100x150mm`, `letter` or `a4`';
  if (!media || word === undefined) {
    const size = /^(\d+(?:[.,]\d+)?)\s*(?:"|in|inch|inches|mm)?\s*[x×*]\s*(\d+(?:[.,]\d+)?)\s*("|in|inch|inches|mm)?$/i.exec(word ?? '');
    if (size) {
      const unit = size[3]?.toLowerCase() === 'mm' || Number(size[1]?.replace(',', '.')) > 30 ? 'mm' : 'in';
      return wrongValue(slot, wants, `Write ${quote(`${size[1] ?? ''}x${size[2] ?? ''}${unit}`.replaceAll(',', '.'))}.`, 'config/bad-unit');
    }
    return wrongValue(slot, wants, useOneOf(word ?? '', MEDIA_NAMES));
  }
  return isPage(media) ? word : wrongValue(slot, `is ${PAGE_RANGE}`, 'Write the size of the paper: `4x6in`.');
}
