import { GRID_NAMES } from '../geometry/grid.js';
import { OUTPUT_KINDS } from '../geometry/printer.js';
import { SORT_KEYS } from '../orders/sort-parcels.js';
import type { Step } from '../steps/step.js';
import { DRAFT_7, type JsonSchema } from './json-schema.js';
import { kindSchema, LENGTH, MEDIA, optionSchema, wordsSchema } from './option-schema.js';
import type { CHANNEL_KEYS, OUTPUT_KEYS, PIPELINE_KEYS, RECIPE_KEYS } from './keys.js';
import { RECIPE_NEEDS } from './keys.js';
import { MOST_JOBS, PIPELINE_DEFAULTS } from './pipeline-file.js';
import { ordersSchema } from './orders-schema.js';
import { optionsOf } from './step-options.js';

const TEXT: JsonSchema = { type: 'string', pattern: '\\S' };
const oneOrMore = (items: JsonSchema): JsonSchema => ({ anyOf: [items, { type: 'array', items, minItems: 1 }] });

const definitionName = (step: Step): string => `step-${step.name}`;

/** The options of each step, as a map or in their short form. */
const stepDefinitions = (steps: readonly Step[]): Readonly<Record<string, JsonSchema>> =>
  Object.fromEntries(steps.map((step) => [definitionName(step), stepSchema(step)]));

function stepSchema(step: Step): JsonSchema {
  const options = optionsOf(step);
  const map: JsonSchema = {
    type: 'object',
    additionalProperties: false,
    properties: Object.fromEntries(Object.entries(options).map(([name, option]) => [name, optionSchema(option)])),
  };
  const short = step.short === undefined ? undefined : options[step.short];
  const forms: readonly JsonSchema[] = [
    map,
    { type: 'null' },
    ...(short ? [{ description: short.description, ...kindSchema(short.kind) }] : []),
  ];
  return { description: step.summary, anyOf: forms };
}

const stepMap = (steps: readonly Step[]): JsonSchema => ({
  type: 'object',
  additionalProperties: false,
  properties: Object.fromEntries(steps.map((step) => [step.name, { $ref: `#/definitions/${definitionName(step)}` }])),
});

/** The editor schema of a recipe file, from the steps' declarations. */
export function recipeSchema(steps: readonly Step[]): JsonSchema {
  const names: readonly JsonSchema[] = steps.map((step) => ({ const: step.name, description: step.summary }));
  const properties: Record<(typeof RECIPE_KEYS)[number], JsonSchema> = {
    about: { description: 'One sentence that says what the recipe is for.', type: 'string', pattern: '\\S' },
    orders: ordersSchema(),
    steps: {
      description: 'The steps in order, one entry each: a name, or a name with options.',
      type: 'array',
      minItems: 1,
      items: { anyOf: [...names, { ...stepMap(steps), minProperties: 1, maxProperties: 1 }] },
    },
  };
  return {
    $schema: DRAFT_7,
    title: 'Slipyard recipe',
    description: 'How the documents of one layout become print-ready labels.',
    type: 'object',
    additionalProperties: false,
    required: RECIPE_NEEDS,
    properties,
    definitions: stepDefinitions(steps),
  };
}

/** What is said of any printer beside its media and grid. */
const PRINTER: Record<Exclude<(typeof OUTPUT_KEYS)[number], 'media' | 'grid'>, JsonSchema> = {
  output: {
    description:
      "Pages as their sources draw them, as the printer's own dots, or dots and a PWG raster file beside the PDF. Default: vector.",
    ...wordsSchema(OUTPUT_KINDS),
  },
  'print-width': { description: 'How far the print head reaches across the page. Default: over the whole page.', ...LENGTH },
  margins: {
    description: 'Where the printer can print nothing: one length, or four from the top clockwise. Default: none.',
    anyOf: [LENGTH, { type: 'array', items: LENGTH, minItems: 4, maxItems: 4 }],
  },
  offset: {
    description: 'How far everything is moved to the right and down; what to write here is told by `slipyard ruler`. Default: not at all.',
    type: 'array',
    items: LENGTH,
    minItems: 2,
    maxItems: 2,
  },
};

/** One of `outputs`. */
const OUTPUT: JsonSchema = {
  type: 'object',
  additionalProperties: false,
  required: ['media'],
  properties: {
    media: { description: 'The page that it takes: letter, a4 … or any other size.', ...MEDIA },
    grid: {
      description: 'Its dots, as its driver draws them. Default: 300dpi for pages from 6 in wide, 203dpi for narrower ones.',
      ...wordsSchema(GRID_NAMES),
    },
    ...PRINTER,
  } satisfies Record<(typeof OUTPUT_KEYS)[number], JsonSchema>,
};

/** The editor schema of a pipeline file, from the steps' declarations. */
export function pipelineSchema(steps: readonly Step[]): JsonSchema {
  const { media, grid, out } = PIPELINE_DEFAULTS;
  const properties: Record<(typeof PIPELINE_KEYS)[number], JsonSchema> = {
    media: { description: `The label that the printer takes. Default: ${media}.`, ...MEDIA },
    grid: { description: `The dots of the printer, as its driver draws them. Default: ${grid}.`, ...wordsSchema(GRID_NAMES) },
    ...PRINTER,
    outputs: {
      description: 'Other printers, each by a name of your own. Default: none.',
      type: 'object',
      minProperties: 1,
      additionalProperties: OUTPUT,
    },
    'large-pages': {
      description:
        'The name of the output that takes customs forms and packing slips too large to be read at the size of a label. Default: forms are held, slips set anew.',
      ...TEXT,
    },
    studio: {
      description: 'Who sends: what stands at the head of slips made from orders.',
      type: 'object',
      additionalProperties: false,
      required: ['name'],
      properties: {
        name: { description: 'The name of the studio.', ...TEXT },
        contact: { description: 'Lines below the name: address, telephone, e-mail.', ...oneOrMore(TEXT) },
      },
    },
    'stack-order': {
      description: 'By what parcels are sorted, one word or several in turn. Default: channel by channel, file by file.',
      ...oneOrMore(wordsSchema(SORT_KEYS)),
    },
    lists: { description: `What the pick list and the hand-over list are printed on. Default: what labels are.`, ...MEDIA },
    out: {
      description: `The folder for the results, from the pipeline file's own folder. Default: ${out}.`,
      type: 'string',
      pattern: '\\S',
    },
    jobs: {
      description: 'How many documents are worked on at a time. Default: what the machine can spare.',
      type: 'integer',
      minimum: 1,
      maximum: MOST_JOBS,
    },
    channels: {
      description: 'One entry for each sales channel, in the order in which they are printed.',
      type: 'array',
      minItems: 1,
      items: channelSchema(steps),
    },
  };
  return {
    $schema: DRAFT_7,
    title: 'Slipyard pipeline',
    description: "Which documents of which sales channel are turned into the day's stack, and how.",
    type: 'object',
    additionalProperties: false,
    required: ['channels'],
    properties,
    definitions: stepDefinitions(steps),
  };
}

function channelSchema(steps: readonly Step[]): JsonSchema {
  const properties: Record<(typeof CHANNEL_KEYS)[number], JsonSchema> = {
    name: { description: 'A name of your own for the channel; each name once.', ...TEXT, maxLength: 60 },
    files: {
      description: "The channel's documents: a file name or pattern, or a list of them, from the pipeline file's own folder.",
      ...oneOrMore(TEXT),
      examples: ['inbox/my-shop/*.pdf'],
    },
    orders: {
      description: "The channel's order files, like `files`; the recipe's `orders` says how they are read. Default: none.",
      ...oneOrMore(TEXT),
      examples: ['inbox/my-shop/orders*.csv'],
    },
    carrier: { description: 'Who takes its parcels, as the hand-over list names it. Default: not said.', ...TEXT },
    'print-on': {
      description: 'The name of the output that all its pages go to. Default: the printer that `media` and the keys beside it speak of.',
      ...TEXT,
      examples: ['office'],
    },
    recipe: {
      description: 'The name of a recipe that comes with the program, or the path of a recipe file.',
      ...TEXT,
      examples: ['any-page'],
    },
    options: {
      description: "Options for this channel alone, by the step's name; they take the place of the recipe's own.",
      anyOf: [stepMap(steps), { type: 'null' }],
    },
  };
  return { type: 'object', additionalProperties: false, required: ['name', 'files', 'recipe'], properties };
}
