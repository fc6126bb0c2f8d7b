/** A folder of src/ (or `cli.ts`), what it may import besides itself, and why. */
export interface Room {
  readonly may: readonly string[];
  readonly why: string;
}

/**
 * The import direction. Types count like values: a room that names another room's type can't be read without it.
 * `geometry` and `diagnostics` are the floor; every row may only name rows above it.
 */
export const ROOMS: Readonly<Record<string, Room>> = {
  geometry: {
    may: [],
    why: 'Lengths, boxes and matrices are arithmetic: they stand without anything else, so everything may stand on them.',
  },
  text: { may: [], why: 'How texts are put in order is the same for file names and order numbers, so it stands below both.' },
  diagnostics: { may: [], why: 'A message is data that any room can make; it would drag along whatever it imported.' },
  sheet: { may: ['geometry', 'diagnostics'], why: 'The value that everything hands on must not know who makes, draws or proves it.' },
  files: { may: ['diagnostics'], why: 'Writing whole files is the same for every content, so this room knows of none.' },
  reading: {
    may: ['geometry', 'diagnostics', 'sheet'],
    why: 'Reading gathers facts; what a step or the press wants with them must not colour them.',
  },
  press: {
    may: ['geometry', 'diagnostics', 'sheet', 'reading'],
    why: 'The press draws the plan as it stands; it never asks a step what was meant.',
  },
  locating: {
    may: ['geometry', 'diagnostics', 'sheet', 'reading'],
    why: 'Candidates come from the facts of a page alone, so each can be read and tested apart.',
  },
  proof: {
    may: ['geometry', 'diagnostics', 'sheet', 'reading', 'press'],
    why: 'The proof judges what the press drew against what was read; a proof that knew the steps would share their mistakes.',
  },
  orders: {
    may: ['text', 'geometry', 'diagnostics', 'files', 'sheet'],
    why: 'Orders are read and matched as plain data: which label is whose must not depend on how labels are found or drawn.',
  },
  steps: {
    may: ['geometry', 'diagnostics', 'sheet', 'reading', 'locating', 'press', 'proof', 'orders'],
    why: 'Steps decide from facts and options; config, intake and the batch are around them, never inside.',
  },
  config: {
    may: ['geometry', 'diagnostics', 'files', 'orders', 'steps'],
    why: 'What a recipe may say is derived from the step declarations; config never runs one.',
  },
  recipe: {
    may: ['geometry', 'diagnostics', 'sheet', 'reading', 'proof', 'orders', 'steps', 'config'],
    why: 'Applying a checked recipe to one document needs its steps and its facts, but no batch, so one document can be tested alone; its outcome tells what each proved code is for, and what a label says to the orders.',
  },
  intake: {
    may: ['text', 'geometry', 'diagnostics', 'files', 'sheet', 'reading', 'config'],
    why: 'Finding work looks at files and the pipeline; what is done with a document is not its business.',
  },
  batch: {
    may: [
      'geometry',
      'diagnostics',
      'sheet',
      'files',
      'reading',
      'press',
      'locating',
      'proof',
      'orders',
      'steps',
      'config',
      'recipe',
      'intake',
    ],
    why: 'The one place that knows the whole story; nothing that it uses may know it.',
  },
  draft: {
    may: ['geometry', 'diagnostics', 'sheet', 'files', 'reading', 'locating', 'orders', 'steps', 'config', 'recipe', 'batch'],
    why: 'A recipe is drafted from what pages show and tried by what a run does with it; nothing that a run needs may need it.',
  },
  explain: {
    may: ['geometry', 'diagnostics', 'sheet', 'reading', 'press', 'locating', 'proof', 'steps', 'config', 'recipe', 'batch'],
    why: 'What a page is and what comes of it is looked up where a run looks it up; nothing that a run needs may need it.',
  },
  ruler: {
    may: ['geometry', 'press'],
    why: 'The ruler page is drawn by the press from media and grid alone: it measures a printer, so it knows no document.',
  },
  report: {
    may: ['geometry', 'diagnostics', 'sheet', 'config', 'recipe', 'intake', 'batch', 'explain'],
    why: 'Words and pictures about what happened: it listens to the batch and is never asked by it.',
  },
  commands: {
    may: [
      'geometry',
      'diagnostics',
      'sheet',
      'files',
      'steps',
      'config',
      'recipe',
      'intake',
      'batch',
      'draft',
      'explain',
      'ruler',
      'report',
    ],
    why: 'A command gathers inputs, calls and prints; reading, press and proof are reached through the batch only.',
  },
  'cli.ts': {
    may: ['diagnostics', 'commands'],
    why: 'Arguments to command to exit code, nothing else, so that every command can be called without a process.',
  },
};

/** Rooms that may import a package, and why only those. Every runtime dependency has a row. */
export const LIBRARIES: Readonly<Record<string, Room>> = {
  '@embedpdf/pdfium': { may: ['reading', 'press'], why: 'One engine, opened once per document; every other room gets facts and rasters.' },
  'pdf-lib': { may: ['reading', 'press'], why: 'PDF objects stay where documents are opened and drawn.' },
  'pdfjs-dist': { may: ['reading'], why: 'A second engine draws a page again where two may differ; everyone else gets its pixels.' },
  '@napi-rs/canvas': { may: ['reading'], why: 'What pdfjs-dist draws on: exactly the version that it was made for.' },
  sharp: { may: ['reading', 'press'], why: 'Pictures are decoded once, on opening; everything else gets plain samples.' },
  'zxing-wasm': {
    may: ['reading', 'press'],
    why: 'The proof decodes through reading, so that source and output are read by the same rules.',
  },
  '@cantoo/fontkit': { may: ['press'], why: 'Only the press sets type.' },
  '@expo-google-fonts/noto-sans': { may: ['press'], why: 'Only the press sets type.' },
  'csv-parse': { may: ['orders'], why: 'Order files are read at one place; everyone else gets orders.' },
  'iso-3166': { may: ['orders'], why: 'Which codes are countries matters only where an order file names one.' },
  'jsonc-parser': { may: ['orders'], why: 'Order files are read at one place, with the line and column of each value.' },
  '@expo-google-fonts/noto-sans-arabic': {
    may: ['press'],
    why: 'Only the press sets type; slips say what buyers write, in their scripts.',
  },
  '@expo-google-fonts/noto-sans-hebrew': {
    may: ['press'],
    why: 'Only the press sets type; slips say what buyers write, in their scripts.',
  },
  '@expo-google-fonts/noto-sans-thai': { may: ['press'], why: 'Only the press sets type; slips say what buyers write, in their scripts.' },
  '@fontsource-variable/noto-sans-jp': {
    may: ['press'],
    why: 'Only the press sets type; a region its own forms, in slices of which a slip opens a few.',
  },
  '@fontsource-variable/noto-sans-kr': {
    may: ['press'],
    why: 'Only the press sets type; a region its own forms, in slices of which a slip opens a few.',
  },
  '@fontsource-variable/noto-sans-sc': {
    may: ['press'],
    why: 'Only the press sets type; a region its own forms, in slices of which a slip opens a few.',
  },
  '@fontsource-variable/noto-sans-tc': {
    may: ['press'],
    why: 'Only the press sets type; a region its own forms, in slices of which a slip opens a few.',
  },
  'bidi-js': { may: ['press'], why: 'The order in which a mixed line is seen (UAX #9) is a question of setting type.' },
  linebreak: { may: ['press'], why: 'Where a line may end (UAX #14) is a question of setting type.' },
  'unicode-emoji-json': { may: ['press'], why: 'What no typeface has is printed by its name.' },
  yaml: { may: ['config'], why: 'Positions of keys matter only where a file is checked; everyone else gets checked values.' },
  'natural-orderby': { may: ['text', 'orders'], why: 'What natural order is stands at one place; orders rank many texts by it at once.' },
  tinyglobby: { may: ['intake'], why: 'Globs are resolved once, on intake.' },
  yauzl: { may: ['intake'], why: 'A ZIP is only a folder of documents, and only intake knows folders.' },
  'p-queue': { may: ['batch'], why: 'Only the batch has many documents.' },
  pino: { may: ['batch', 'report'], why: 'The log is one more printer of events.' },
  'cli-progress': { may: ['report'], why: 'Only report talks to people.' },
  '@tesseract.js-data/eng': { may: ['reading'], why: 'What tesseract.js reads by: it comes with the package, nothing is fetched.' },
  'tesseract.js': { may: ['reading'], why: 'Reading words out of a picture gathers facts, as reading its codes does.' },
  commander: { may: ['cli.ts'], why: 'Commands take plain arguments, so that they can be called without a command line.' },
};

/** Node's own modules that any room may use: none of them writes a file, starts a process or reaches the network. */
export const HARMLESS_BUILTINS: readonly string[] = [
  'node:assert',
  'node:buffer',
  'node:crypto',
  'node:events',
  'node:module',
  'node:os',
  'node:path',
  'node:perf_hooks',
  'node:process',
  'node:stream',
  'node:stream/promises',
  'node:timers/promises',
  'node:url',
  'node:util',
  'node:zlib',
];

/** What rooms other than `files` may take from node:fs: looking, never changing. */
export const LOOKING: readonly string[] = [
  'access',
  'accessSync',
  'createReadStream',
  'existsSync',
  'lstat',
  'lstatSync',
  'open',
  'openSync',
  'opendir',
  'read',
  'readSync',
  'readFile',
  'readFileSync',
  'readdir',
  'readdirSync',
  'realpath',
  'realpathSync',
  'stat',
  'statSync',
  'close',
  'closeSync',
  'fstat',
  'fstatSync',
  'constants',
  // Types.
  'Dirent',
  'Stats',
  'FileHandle',
];
