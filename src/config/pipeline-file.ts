/* eslint-disable @typescript-eslint/no-confusing-void-expression -- a reader hands on the undefined that says "wrong, and reported" */
import { isMap, isNode, isSeq } from 'yaml';
import { dirname, isAbsolute, relative, resolve } from 'node:path';
import type { GridName } from '../geometry/grid.js';
import { mediaNamed } from '../geometry/media.js';
import type { Step } from '../steps/step.js';
import { readChannel, type ChannelReading, type NamedPattern } from './channel.js';
import type { ConfigFile } from './config-file.js';
import { tooManyDots } from './too-many-dots.js';
import { readMedia } from './option-value.js';
import { readLargePages, readOutputs } from './output-keys.js';
import { readGrid, readPrinter } from './printer-keys.js';
import { readOrdersSetup } from './studio-keys.js';
import { CHANNEL_KEYS, isKey, PIPELINE_KEYS, RECIPE_KEYS } from './keys.js';
import { parseYaml, spanOf } from './parse-yaml.js';
import type { Channel, Pipeline } from './pipeline.js';
import { presence, readMap, wrongKind, type Entry } from './read-map.js';
import { readInteger, readText, slotOf, wrongValue } from './read-value.js';
import type { RecipeShelf } from './recipe-shelf.js';

export const PIPELINE_DEFAULTS = { media: '4x6in', grid: '203dpi', out: 'out' } as const satisfies {
  media: string;
  grid: GridName;
  out: string;
};
/** More workers than this help nobody. */
export const MOST_JOBS = 64;

/** What was typed beside the file, checked; it counts more than what the file says. */
export interface Given {
  readonly media?: string | undefined;
  readonly grid?: GridName | undefined;
}

/**
 * Reads a pipeline; undefined when anything is wrong with it or its recipes, which is then in the diagnostics of each file.
 * @param patterns what its channels name as files is added to it
 */
export function readPipeline(
  file: ConfigFile,
  folder: string,
  steps: readonly Step[],
  shelf: RecipeShelf,
  given: Given = {},
  patterns: NamedPattern[] = [],
): Pipeline | undefined {
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
  const ownMedia = read('media', (entry) => readMedia(slotOf(file, entry)), PIPELINE_DEFAULTS.media);
  const ownGrid = read<GridName>('grid', (entry) => readGrid(file, entry), PIPELINE_DEFAULTS.grid);
  const media = given.media ?? ownMedia;
  const grid = given.grid ?? ownGrid;
  const tooMany = media !== undefined && grid !== undefined ? tooManyDots(media, grid) : undefined;
  if (tooMany) {
    const entry = (given.media === undefined ? entries.get('media') : undefined) ?? entries.get('grid') ?? entries.get('media');
    file.error('config/too-many-dots', entry?.value ? spanOf(entry.value) : { start: 0, end: 1 }, tooMany.message, tooMany.remedy);
  }
  const out = read('out', (entry) => readOut(file, folder, entry), resolve(folder, PIPELINE_DEFAULTS.out));
  const jobs = read<number | undefined>('jobs', (entry) => readInteger(slotOf(file, entry), 1, MOST_JOBS), undefined);
  const printer = readPrinter(file, entries, media, grid);
  const day = readOrdersSetup(file, entries, media);
  const named = readOutputs(file, entries.get('outputs'));
  const largePages = read<string | undefined>('large-pages', (entry) => readLargePages(slotOf(file, entry), named, media), undefined);
  const channelsEntry = entries.get('channels');
  const around = { file, folder, steps, shelf, media: media === undefined ? undefined : mediaNamed(media), named, patterns };
  const channels = channelsEntry ? readChannels(around, channelsEntry) : undefined;
  if (file.diagnostics.length > 0 || media === undefined || grid === undefined || out === undefined || !channels || !printer || !day)
    return undefined;
  const large = largePages === undefined ? {} : { largePages };
  return { file: file.path, folder, media, grid, printer, outputs: named.outputs, ...large, day, out, jobs, channels };
}

function pipelineKeyElsewhere(steps: readonly Step[], key: string): string | undefined {
  if (isKey(CHANNEL_KEYS, key)) return 'It belongs to a channel: write it below an entry of `channels:`.';
  if (isKey(RECIPE_KEYS, key)) return 'It belongs in a recipe file; the pipeline names that file with `recipe:`.';
  if (steps.some((step) => step.name === key)) return 'It is a step: it belongs in a recipe, or below `options:` of a channel.';
  return undefined;
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

function readChannels(around: Omit<ChannelReading, 'names'>, entry: Entry): readonly Channel[] | undefined {
  const { file } = around;
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
  const channels = node.items.map((item) => readChannel({ ...around, names }, presence(item), isNode(item) ? spanOf(item) : spanOf(node)));
  return channels.every((channel) => channel !== undefined) ? channels : undefined;
}
