/* eslint-disable @typescript-eslint/no-confusing-void-expression -- a reader hands on the undefined that says "wrong, and reported" */
import type { Node } from 'yaml';
import type { Media } from '../geometry/media.js';
import { ROLL } from '../geometry/printer.js';
import type { Place } from '../diagnostics/diagnostic.js';
import { nearest } from '../diagnostics/nearest.js';
import type { Step } from '../steps/step.js';
import { compileRecipe, type Overrides } from './compile-recipe.js';
import type { ConfigFile, Span } from './config-file.js';
import { CHANNEL_KEYS, isKey, PIPELINE_KEYS, RECIPE_KEYS } from './keys.js';
import { readOutputName, type OutputsRead } from './output-keys.js';
import { spanOf } from './parse-yaml.js';
import type { Channel } from './pipeline.js';
import type { CompiledRecipe } from './recipe.js';
import { readMap, type Entry } from './read-map.js';
import { readOneOrMore, readText, slotOf, wrongValue, type Slot } from './read-value.js';
import { stepNames, type WrittenRecipe } from './recipe-file.js';
import { checkOnMedia, checkTogether } from './option-conflicts.js';
import type { RecipeShelf } from './recipe-shelf.js';
import { ownersRemedy, readStepOptions, type WrittenOptions } from './step-options.js';
import { quote } from './words.js';

export interface ChannelReading {
  readonly file: ConfigFile;
  readonly folder: string;
  readonly steps: readonly Step[];
  readonly shelf: RecipeShelf;
  /** What is printed on; undefined when that is wrong, which is told elsewhere. */
  readonly media: Media | undefined;
  /** The other printers. */
  readonly named: OutputsRead;
  /** Names of the channels so far, in small letters, with their lines. */
  readonly names: Map<string, number>;
  /** What the channels so far name as files, for whoever looks whether it is there. */
  readonly patterns: NamedPattern[];
}

/** What a channel names under `files` or `orders`, and where it stands. */
export interface NamedPattern {
  /** As written, with a `!` in front where it takes away. */
  readonly pattern: string;
  readonly place: Place;
}

/** Reads one channel; undefined when anything is wrong with it or its recipe. */
export function readChannel(reading: ChannelReading, node: Node | undefined, at: Span): Channel | undefined {
  const { file, folder, steps, shelf, media } = reading;
  const entries = readMap(file, node, at, {
    what: 'a channel',
    keys: CHANNEL_KEYS,
    required: ['name', 'files', 'recipe'],
    elsewhere: (key) => channelKeyElsewhere(steps, key),
  });
  if (!entries) return undefined;
  const read = <T>(key: string, reader: (slot: Slot) => T | undefined): T | undefined => {
    const entry = entries.get(key);
    return entry && reader(slotOf(file, entry));
  };
  const name = read('name', (slot) => readName(reading, slot));
  const files = read('files', (slot) => readFiles(slot, reading.patterns));
  const orders = read('orders', (slot) => readFiles(slot, reading.patterns));
  const carrier = read('carrier', (slot) => readText(slot, 'is the name of who takes the parcels', 'carrier: our carrier'));
  const printOn = read('print-on', (slot) => readOutputName(slot, [ROLL, ...reading.named.names]));
  const reference = read('recipe', (slot) => readText(slot, "is a recipe's name or file", 'recipe: any-page'));
  const recipeEntry = entries.get('recipe');
  const recipe =
    reference === undefined || !recipeEntry?.value ? undefined : shelf.get(reference, folder, file.place(spanOf(recipeEntry.value)));
  const overrides = readOverrides(file, steps, recipe, entries.get('options'));
  const ordersEntry = entries.get('orders');
  if (ordersEntry && recipe && !recipe.orders) tellNoMap(file, ordersEntry.keySpan, recipe);
  if (recipe && overrides) {
    const places = { file, spans: overrides.spans };
    const printer = reading.named.outputs.find((each) => each.name === printOn);
    if (checkTogether(recipe, overrides.values, places) && media) checkOnMedia(recipe, media, overrides.values, places, printer);
  }
  if (name === undefined || !files || !recipe || !overrides || (entries.has('print-on') && printOn === undefined)) return undefined;
  const compiled = compileRecipe(recipe, overrides.values);
  if (!ordersEntry && slipsFromOrders(compiled)) return tellNoOrders(file, recipeEntry?.keySpan ?? at);
  const said = {
    ...(orders ? { orders } : {}),
    ...(carrier === undefined ? {} : { carrier }),
    ...(printOn === undefined ? {} : { printOn }),
  };
  return { name, files, ...said, recipe: compiled };
}

/** Whether a recipe has its slips made from orders. */
export const slipsFromOrders = ({ steps }: CompiledRecipe): boolean =>
  steps.some(({ name, options }) => name === 'packing-slip' && options['from'] === 'from-orders');

function tellNoOrders(file: ConfigFile, at: Span): undefined {
  file.error(
    'config/no-orders',
    at,
    'the recipe has slips made from orders, but the channel names no order files',
    'Add `orders: inbox/orders*.csv` to the channel, or another `packing-slip`.',
  );
  return undefined;
}

function tellNoMap(file: ConfigFile, at: Span, recipe: WrittenRecipe): void {
  file.error(
    'config/no-order-map',
    at,
    `the recipe ${quote(recipe.name)} does not say which column of an order file holds what`,
    'Have it drafted by `slipyard draft --orders FILE`, and put the lines into a recipe of your own, beside `about` and `steps`.',
  );
}

function channelKeyElsewhere(steps: readonly Step[], key: string): string | undefined {
  if (key === 'output' || key === 'outputs')
    return 'Name the printer above `channels:`, one level up, below `outputs:`; here say which one: `print-on: office`.';
  if (key !== 'channels' && isKey(PIPELINE_KEYS, key))
    return `It holds for all channels: write it one level up, with no spaces before it, above \`channels:\`.`;
  if (isKey(RECIPE_KEYS, key)) return 'It belongs in a recipe file; the channel names that file with `recipe:`.';
  if (steps.some((step) => step.name === key)) return `Put it one level down: below \`options:\` of this channel.`;
  if (nearest(key, CHANNEL_KEYS) !== undefined) return undefined;
  const owners = ownersRemedy(steps, key);
  return owners === undefined ? undefined : `${owners.slice(0, -1)}, below \`options:\` of this channel.`;
}

/** What looks like a path or a pattern would mislead in a message, where both stand beside names of channels. */
const BAD_IN_NAME = /[/\\:*?"<>|\p{C}]/u;
const LONGEST_NAME = 60;

function readName({ file, names }: ChannelReading, slot: Slot): string | undefined {
  const name = readText(slot, 'is a text', 'name: my-shop');
  if (name === undefined) return undefined;
  if (BAD_IN_NAME.test(name) || name.startsWith('.')) {
    return wrongValue(
      slot,
      'stands in messages and reports: it holds none of / \\ : * ? " < > | and no dot in front',
      'Use letters, digits and `-`.',
    );
  }
  if (name.length > LONGEST_NAME) return wrongValue(slot, `has at most ${LONGEST_NAME} characters`, 'Write a shorter name.');
  const first = names.get(name.toLowerCase());
  const line = file.lineOf(slot.node ? spanOf(slot.node).start : slot.at.start);
  if (first === undefined) names.set(name.toLowerCase(), line);
  else return duplicateName(slot, name, first);
  return name;
}

function duplicateName({ file, node, at }: Slot, name: string, firstLine: number): undefined {
  const message = `two channels are named ${quote(name)}; the first is in line ${firstLine}`;
  file.error('config/duplicate-name', node ? spanOf(node) : at, message, 'Give each channel a name of its own.');
  return undefined;
}

/** What to write, by the key. */
const PATTERNS: Readonly<Record<string, string>> = { files: 'inbox/*.pdf', orders: 'inbox/orders*.csv' };

const exampleFor = ({ name }: Slot): string => `${name}: ${PATTERNS[name] ?? ''}`;

const wantsFiles = ({ name }: Slot): string => `names the ${name === 'orders' ? 'order files' : 'files'} of the channel`;

function readFiles(slot: Slot, patterns: NamedPattern[]): readonly string[] | undefined {
  const files = readOneOrMore(slot, wantsFiles(slot), exampleFor(slot), (each) => {
    const pattern = readPattern(each);
    if (pattern !== undefined && each.node) patterns.push({ pattern, place: each.file.place(spanOf(each.node)) });
    return pattern;
  });
  if (!files?.every((pattern) => pattern.startsWith('!'))) return files;
  const { file, node, at, name } = slot;
  const remedy = `Name the files that are to be taken, too: \`${name}: [${PATTERNS[name] ?? ''}, "!inbox/old*"]\`.`;
  file.error(
    'config/bad-value',
    node ? spanOf(node) : at,
    `${quote(name)} only takes away: a pattern that begins with \`!\` names nothing`,
    remedy,
  );
  return undefined;
}

function readPattern(slot: Slot): string | undefined {
  const pattern = readText(slot, wantsFiles(slot), exampleFor(slot));
  if (pattern?.includes('\\') === true)
    return wrongValue(slot, 'has `/` between folders', `Write ${quote(pattern.replaceAll('\\', '/'))}.`);
  if (pattern !== undefined && /\p{C}/u.test(pattern)) {
    return wrongValue(
      slot,
      'holds a special character that no file name has',
      'Write `/` instead of `\\`; between double quotes `\\` makes special characters.',
    );
  }
  return pattern;
}

/** A channel's own options by step; undefined when any is wrong. Without a recipe only what doesn't depend on it is checked. */
function readOverrides(
  file: ConfigFile,
  steps: readonly Step[],
  recipe: WrittenRecipe | undefined,
  entry: Entry | undefined,
): { readonly values: Overrides; readonly spans: ReadonlyMap<string, Span> } | undefined {
  if (!entry?.value) return { values: new Map(), spans: new Map() };
  const before = file.diagnostics.length;
  const entries = readMap(file, entry.value, entry.keySpan, {
    what: '`options` of a channel',
    keys: steps.map((step) => step.name),
    elsewhere: (key) =>
      nearest(
        key,
        steps.map((step) => step.name),
      ) === undefined
        ? ownersRemedy(steps, key)
        : undefined,
  });
  const overrides = new Map<string, WrittenOptions>();
  const spans = new Map<string, Span>();
  for (const own of entries?.values() ?? []) {
    const step = steps.find((each) => each.name === own.key);
    if (!step) continue;
    if (recipe && !recipe.steps.some((written) => written.step === step)) {
      const message = `the recipe ${quote(recipe.name)} has no step ${quote(step.name)}, so its options have no effect`;
      file.error('config/step-not-in-recipe', own.keySpan, message, `Its steps are ${stepNames(recipe)}.`);
      continue;
    }
    const values = readStepOptions(file, steps, step, own.value, own.keySpan);
    if (values) overrides.set(step.name, values);
    spans.set(step.name, own.keySpan);
  }
  return file.diagnostics.length > before ? undefined : { values: overrides, spans };
}
