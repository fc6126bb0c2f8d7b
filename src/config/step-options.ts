import { isMap, isSeq, type Node } from 'yaml';
import type { Options } from '../steps/option.js';
import type { Step } from '../steps/step.js';
import type { ConfigFile, Span } from './config-file.js';
import { readOptionValue } from './option-value.js';
import { kindOf, readMap } from './read-map.js';
import { slotOf } from './read-value.js';
import { listWords, quote } from './words.js';

/** The options that somebody wrote for a step, checked; only those. */
export type WrittenOptions = ReadonlyMap<string, unknown>;

/** The declared options of a step. */
export const optionsOf = (step: Step): Options => step.options;

/** The steps that have an option of this name. */
const stepsWithOption = (steps: readonly Step[], name: string): readonly string[] =>
  steps.filter((step) => Object.hasOwn(optionsOf(step), name)).map((step) => step.name);

/**
 * Reads what stands behind `step:` — a map of options, or one value for the step's short option. Undefined when any of it is
 * wrong.
 * @param node undefined when nothing stands there: no options
 * @param at the step's name, for messages
 */
export function readStepOptions(
  file: ConfigFile,
  steps: readonly Step[],
  step: Step,
  node: Node | undefined,
  at: Span,
): WrittenOptions | undefined {
  const declared = optionsOf(step);
  if (!node) return new Map();
  if (!isMap(node)) return readShortForm(file, step, node, at);

  const before = file.diagnostics.length;
  const entries = readMap(file, node, at, {
    what: quote(step.name),
    keys: Object.keys(declared),
    elsewhere: (key) => optionElsewhere(steps, step, key),
  });
  const values = new Map<string, unknown>();
  for (const entry of entries?.values() ?? []) {
    const option = declared[entry.key];
    if (option) values.set(entry.key, readOptionValue(slotOf(file, entry), option.kind));
  }
  return file.diagnostics.length > before ? undefined : values;
}

function readShortForm(file: ConfigFile, step: Step, node: Node, at: Span): WrittenOptions | undefined {
  const declared = optionsOf(step);
  const short = step.short === undefined ? undefined : declared[step.short];
  if (step.short === undefined || !short) {
    const names = Object.keys(declared);
    const remedy =
      names.length === 0
        ? `Write ${quote(step.name)} alone.`
        : `Write its options by name: ${quote(`${step.name}: { ${names[0] ?? ''}: … }`)}.`;
    const span = { start: node.range?.[0] ?? at.start, end: node.range?.[1] ?? at.end };
    file.error(
      'config/wrong-type',
      span,
      `${quote(step.name)} takes ${names.length === 0 ? 'no options' : 'its options by name'}, not ${kindOf(node)}`,
      remedy,
    );
    return undefined;
  }
  if (isSeq(node) && short.kind.kind !== 'box' && short.kind.kind !== 'choices' && short.kind.kind !== 'phrases') {
    const names = Object.keys(declared);
    const span = { start: node.range?.[0] ?? at.start, end: node.range?.[1] ?? at.end };
    file.error(
      'config/wrong-type',
      span,
      `the options of ${quote(step.name)} are a map, not a list`,
      `Write them without dashes: ${listWords(
        names.map((name) => `${name}:`),
        'and',
      )}.`,
    );
    return undefined;
  }
  const value = readOptionValue({ file, name: `${step.name}: ${step.short}`, node, at }, short.kind);
  return value === undefined ? undefined : new Map([[step.short, value]]);
}

function optionElsewhere(steps: readonly Step[], step: Step, key: string): string | undefined {
  const owners = stepsWithOption(
    steps.filter((each) => each !== step),
    key,
  );
  if (owners.length > 0) return `It is an option of ${listWords(owners)}: write it there.`;
  if (steps.some((each) => each.name === key)) return `It is a step: give it an entry of its own in \`steps\`, with a dash.`;
  return undefined;
}

/** Where an option's name belongs that was written where a step's name is expected. */
export function ownersRemedy(steps: readonly Step[], key: string): string | undefined {
  const owners = stepsWithOption(steps, key);
  return owners.length === 0 ? undefined : `It is an option of ${listWords(owners)}: write it below that step.`;
}
