import { basename, extname } from 'node:path';
import { isMap, isNode, isScalar, isSeq, type Node } from 'yaml';
import { nearest } from '../diagnostics/nearest.js';
import type { OrderMap } from '../orders/order-map.js';
import type { Step } from '../steps/step.js';
import type { ConfigFile, Span } from './config-file.js';
import { CHANNEL_KEYS, isKey, ORDERS_KEYS, PIPELINE_KEYS, RECIPE_KEYS, RECIPE_NEEDS } from './keys.js';
import { readOrderMap } from './order-map-keys.js';
import { parseYaml, spanOf } from './parse-yaml.js';
import { presence, readMap, wrongKind } from './read-map.js';
import { readText, slotOf } from './read-value.js';
import { optionsOf, ownersRemedy, readStepOptions, type WrittenOptions } from './step-options.js';
import { checkStepOrder } from './step-order.js';
import { listWords, quote, useOneOf } from './words.js';

/** A step as it stands in a recipe, with the options written there. */
export interface WrittenStep {
  readonly step: Step;
  /** The step's name in the file. */
  readonly span: Span;
  readonly options: WrittenOptions;
}

/** A checked recipe file, before defaults and a channel's own options. */
export interface WrittenRecipe {
  readonly file: ConfigFile;
  readonly name: string;
  readonly about: string;
  readonly steps: readonly WrittenStep[];
  /** Undefined where the recipe says nothing of order files. */
  readonly orders: OrderMap | undefined;
}

/** Reads a recipe; undefined when anything is wrong with it, which is then in `file.diagnostics`. */
export function readRecipe(file: ConfigFile, steps: readonly Step[]): WrittenRecipe | undefined {
  const root = parseYaml(file, 'recipe');
  if (!root) return undefined;
  const entries = readMap(
    file,
    root,
    { start: 0, end: 1 },
    {
      what: 'a recipe',
      keys: RECIPE_KEYS,
      required: RECIPE_NEEDS,
      elsewhere: (key) => recipeKeyElsewhere(steps, key),
    },
  );
  const aboutEntry = entries?.get('about');
  const about =
    aboutEntry &&
    readText(slotOf(file, aboutEntry), 'is one sentence that says what the recipe is for', 'about: Labels on the upper half of a page.');
  const ordersEntry = entries?.get('orders');
  const orders = ordersEntry && readOrderMap(file, ordersEntry);
  const stepsEntry = entries?.get('steps');
  const written = stepsEntry && readSteps(file, steps, stepsEntry.value, stepsEntry.keySpan);
  const readable = written?.filter((each) => each !== undefined) ?? [];
  if (stepsEntry && written) checkStepOrder(file, steps, readable, readable.length === written.length ? stepsEntry.keySpan : undefined);
  if (file.diagnostics.length > 0 || about === undefined) return undefined;
  return { file, name: basename(file.path, extname(file.path)), about, steps: readable, orders };
}

function recipeKeyElsewhere(steps: readonly Step[], key: string): string | undefined {
  if (steps.some((step) => step.name === key)) return `Put it into the list below \`steps:\`, with a dash: ${quote(`- ${key}`)}.`;
  if (isKey(ORDERS_KEYS, key)) return 'It says how order files are read: write it one level down, below `orders:`.';
  if (isKey([...PIPELINE_KEYS, ...CHANNEL_KEYS], key))
    return 'It belongs in the pipeline file; a recipe has `about`, `orders` and `steps`.';
  return ownersRemedy(steps, key);
}

/** The steps in order, undefined for an entry that names none; undefined when there is no list. */
function readSteps(
  file: ConfigFile,
  steps: readonly Step[],
  node: Node | undefined,
  at: Span,
): readonly (WrittenStep | undefined)[] | undefined {
  const remedy = 'Write the steps one below the other, each with a dash: `- split-pages`.';
  if (!node) {
    file.error('config/missing-value', at, '`steps` has nothing behind its colon', remedy);
    return undefined;
  }
  if (!isSeq(node)) {
    wrongKind(file, node, at, '`steps` is a list', remedy);
    return undefined;
  }
  if (node.items.length === 0) {
    file.error('config/bad-value', spanOf(node), '`steps` is an empty list', remedy);
    return undefined;
  }
  return node.items.map((item) => readStep(file, steps, presence(item), isNode(item) ? spanOf(item) : spanOf(node)));
}

function readStep(file: ConfigFile, steps: readonly Step[], node: Node | undefined, at: Span): WrittenStep | undefined {
  if (node && isScalar(node)) {
    const step = findStep(file, steps, String(node.value), spanOf(node));
    return step && { step, span: spanOf(node), options: new Map() };
  }
  if (!node || !isMap(node)) {
    wrongKind(file, node, at, 'a step is its name, or its name with options', 'Write `- name`, or `- name: { option: value }`.');
    return undefined;
  }
  const [first, ...others] = node.items;
  const key = first?.key;
  if (!first || !isScalar(key)) {
    file.error('config/wrong-type', spanOf(node), 'a step begins with its name', 'Write `- name`, or `- name: { option: value }`.');
    return undefined;
  }
  const span = spanOf(key);
  const name = String(key.value);
  const step = name === '<<' ? undefined : findStep(file, steps, name, span);
  for (const other of others) if (isScalar(other.key)) tooManyKeys(file, steps, name, step, String(other.key.value), spanOf(other.key));
  if (!step) return undefined;
  const options = readStepOptions(file, steps, step, presence(first.value), span);
  return { step, span, options: options ?? new Map() };
}

/** A second key in one entry: an option that is not indented enough, or a step without its dash. */
function tooManyKeys(file: ConfigFile, steps: readonly Step[], name: string, step: Step | undefined, key: string, span: Span): void {
  if (key === '<<') return;
  if (key === name) {
    file.error('config/duplicate-key', span, `${quote(key)} stands twice in one entry`, 'Keep one of them.');
    return;
  }
  const isStep = steps.some((each) => each.name === key);
  const isOption = step !== undefined && nearest(key, Object.keys(optionsOf(step))) !== undefined;
  const remedy =
    isStep && !isOption
      ? `Give it a line of its own with a dash: ${quote(`- ${key}`)}.`
      : `Options go below their step, two spaces further in than ${quote(name)}.`;
  file.error('config/misplaced-key', span, `${quote(key)} stands beside the step ${quote(name)}, not below it`, remedy);
}

function findStep(file: ConfigFile, steps: readonly Step[], name: string, span: Span): Step | undefined {
  const found = steps.find((step) => step.name === name);
  if (found) return found;
  const names = steps.map((step) => step.name);
  const glued = /^([^:\s]+):(\S.*)$/.exec(name);
  if (glued && names.includes(glued[1] ?? '')) {
    const remedy = `Put a space behind the colon: ${quote(`- ${glued[1] ?? ''}: ${glued[2] ?? ''}`)}.`;
    file.error('config/syntax', span, `there is no space behind the colon in ${quote(name)}`, remedy);
    return undefined;
  }
  const owners = ownersRemedy(steps, name);
  if (owners !== undefined && nearest(name, names) === undefined) {
    file.error('config/misplaced-key', span, `${quote(name)} is an option, not a step`, owners);
  } else {
    file.error('config/unknown-step', span, `there is no step ${quote(name)}`, useOneOf(name, names));
  }
  return undefined;
}

/** The names of a recipe's steps, for messages. */
export const stepNames = (recipe: WrittenRecipe): string =>
  listWords(
    recipe.steps.map(({ step }) => step.name),
    'and',
  );
