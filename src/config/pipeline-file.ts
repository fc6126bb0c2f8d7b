/* eslint-disable @typescript-eslint/no-confusing-void-expression -- a reader hands on the undefined that says "wrong, and reported" */
import { isMap, isNode, isSeq } from 'yaml';
import { dirname, isAbsolute, relative, resolve } from 'node:path';
import { GRID_NAMES, type GridName } from '../geometry/grid.js';
import type { Step } from '../steps/step.js';
import { CHANNEL_KEYS, readChannel } from './channel.js';
import type { ConfigFile } from './config-file.js';
import { readMedia } from './option-value.js';
import { parseYaml, spanOf } from './parse-yaml.js';
import type { Channel, Pipeline } from './pipeline.js';
import { presence, readMap, wrongKind, type Entry } from './read-map.js';
import { readChoice, readInteger, readText, slotOf, wrongValue } from './read-value.js';
import type { RecipeShelf } from './recipe-shelf.js';
import { quote } from './words.js';

export const PIPELINE_KEYS = ['media', 'grid', 'out', 'jobs', 'channels'] as const;
export const PIPELINE_DEFAULTS = { media: '4x6in', grid: '203dpi', out: 'out' } as const satisfies {
  media: string;
  grid: GridName;
  out: string;
};
/** More workers than this help nobody. */
export const MOST_JOBS = 64;

/** Reads a pipeline; undefined when anything is wrong with it or its recipes, which is then in the diagnostics of each file. */
export function readPipeline(file: ConfigFile, folder: string, steps: readonly Step[], shelf: RecipeShelf): Pipeline | undefined {
  const root = parseYaml(file, 'pipeline');
  if (!root) return undefined;
  const entries = readMap(
    file,
    root,
    { start: 0, end: 1 },
    {
      what: 'a pipeline',
      keys: PIPELINE_KEYS,
      required: ['channels'],
      elsewhere: (key) => pipelineKeyElsewhere(steps, key),
    },
  );
  if (!entries) return undefined;

  const read = <T>(key: string, reader: (entry: Entry) => T | undefined, fallback: T): T | undefined => {
    const entry = entries.get(key);
    return entry ? reader(entry) : fallback;
  };
  const media = read('media', (entry) => readMedia(slotOf(file, entry)), PIPELINE_DEFAULTS.media);
  const grid = read<string>('grid', (entry) => readGrid(file, entry), PIPELINE_DEFAULTS.grid) as GridName | undefined;
  const out = read('out', (entry) => readOut(file, folder, entry), resolve(folder, PIPELINE_DEFAULTS.out));
  const jobs = read<number | undefined>('jobs', (entry) => readInteger(slotOf(file, entry), 1, MOST_JOBS), undefined);
  const channelsEntry = entries.get('channels');
  const channels = channelsEntry ? readChannels(file, folder, steps, shelf, channelsEntry) : undefined;
  if (file.diagnostics.length > 0 || media === undefined || grid === undefined || out === undefined || !channels) return undefined;
  return { file: file.path, folder, media, grid, out, jobs, channels };
}

function pipelineKeyElsewhere(steps: readonly Step[], key: string): string | undefined {
  if (CHANNEL_KEYS.some((each) => each === key)) return 'It belongs to a channel: write it below an entry of `channels:`.';
  if (key === 'about' || key === 'steps') return 'It belongs in a recipe file; the pipeline names that file with `recipe:`.';
  if (steps.some((step) => step.name === key)) return 'It is a step: it belongs in a recipe, or below `options:` of a channel.';
  return undefined;
}

function readGrid(file: ConfigFile, entry: Entry): string | undefined {
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
  return readChoice(slot, GRID_NAMES);
}

function readOut(file: ConfigFile, folder: string, entry: Entry): string | undefined {
  const text = readText(slotOf(file, entry), 'is the name of a folder', 'out: out');
  if (text === undefined) return undefined;
  const out = resolve(folder, text);
  const fromOut = relative(out, folder);
  const holdsPipeline = fromOut === '' || (!fromOut.startsWith('..') && !isAbsolute(fromOut)) || dirname(out) === out;
  if (!holdsPipeline) return out;
  const wants = 'is a folder of its own, in which nothing else is kept';
  return wrongValue(slotOf(file, entry), wants, 'Name a folder for the results alone: `out: out`.');
}

function readChannels(
  file: ConfigFile,
  folder: string,
  steps: readonly Step[],
  shelf: RecipeShelf,
  entry: Entry,
): readonly Channel[] | undefined {
  const remedy = 'Write one entry for each channel, with a dash: `- name: …`, and `files:` and `recipe:` below it.';
  const node = entry.value;
  if (!node) {
    file.error('config/missing-value', entry.keySpan, '`channels` has nothing behind its colon', remedy);
    return undefined;
  }
  if (!isSeq(node)) {
    const single = isMap(node) && node.items.length > 0 ? 'Put a dash before the first key of the channel: `- name: …`.' : remedy;
    wrongKind(file, node, entry.keySpan, '`channels` is a list', single);
    return undefined;
  }
  if (node.items.length === 0) {
    file.error('config/bad-value', spanOf(node), '`channels` is an empty list', remedy);
    return undefined;
  }
  const names = new Map<string, number>();
  const channels = node.items.map((item) =>
    readChannel({ file, folder, steps, shelf, names }, presence(item), isNode(item) ? spanOf(item) : spanOf(node)),
  );
  return channels.every((channel) => channel !== undefined) ? channels : undefined;
}
