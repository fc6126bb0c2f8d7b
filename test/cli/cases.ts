import { join } from 'node:path';
import { write } from '../batch/inbox.js';
import { pipelineFile, put } from './inbox.js';

export interface Case {
  readonly args: readonly string[];
  /** How the command has to end; the golden text says it too, but nobody updates this by accident. */
  readonly code: number;
  readonly before?: (folder: string) => void | Promise<void>;
}

const plain = (args: readonly string[], code: number): Case => ({ args, code });

async function twoChannels(folder: string): Promise<void> {
  await put(folder, ['inbox/mugs/order 2.pdf', 'letter-upper-sideways'], ['inbox/prints/all.pdf', 'label-then-slip']);
  pipelineFile(folder, ['mugs', 'inbox/mugs/*', 'any-page'], ['prints', 'inbox/prints/*.pdf', 'label-then-slip']);
}

/** Something of everything that does not come out as it should. */
async function mixed(folder: string): Promise<void> {
  await put(
    folder,
    ['inbox/order 1.pdf', 'page-4x6'],
    ['inbox/order 1 (1).pdf', 'page-4x6'],
    ['inbox/order 2.pdf', 'letter-ninety-percent'],
    ['inbox/order 10.pdf', 'letter-label-and-slip'],
  );
  write(join(folder, 'inbox/orders.csv'), 'order;name\n1;a\n');
  write(join(folder, 'inbox/order 3.pdf'), '%PDF-1.7\n% that is all\n');
  pipelineFile(folder, ['all', 'inbox', 'any-page']);
}

const oneLabel = (folder: string): Promise<void> => put(folder, ['label.pdf', 'page-4x6']);

/** With wrong words in three places. */
function wrongPipeline(folder: string): void {
  write(
    join(folder, 'pipeline.yaml'),
    'media: 4x6in\ngrid: 203dp\nout: out\nchanels: []\nchannels:\n  - name: mugs\n    files: inbox/*\n    recipe: any-pge\n',
  );
}

export const CASES: Readonly<Record<string, Case>> = {
  'no-command': plain([], 2),
  help: plain(['--help'], 0),
  'help-run': plain(['run', '--help'], 0),
  'help-check': plain(['check', '--help'], 0),
  'help-draft': plain(['draft', '--help'], 0),
  'help-explain': plain(['explain', '--help'], 0),
  'help-ruler': plain(['ruler', '--help'], 0),
  'help-steps': plain(['steps', '--help'], 0),
  'help-schema': plain(['schema', '--help'], 0),
  version: plain(['--version'], 0),
  'unknown-command': plain(['rnu'], 2),
  'unknown-option': plain(['run', '--jbos', '2'], 2),
  'option-without-value': plain(['run', '--recipe'], 2),

  'run-without-pipeline': plain(['run'], 2),
  'run-files-without-recipe': { args: ['run', 'label.pdf'], code: 2, before: oneLabel },
  'run-recipe-without-the-rest': plain(['run', '--recipe', 'any-page', '--config', 'pipeline.yaml'], 2),
  'run-wrong-values': {
    args: ['run', '--recipe', 'any-page', '--out', 'out', '--jobs', '0', '--media', '4x6inch', '--grid', '203dp', 'label.pdf'],
    code: 2,
    before: oneLabel,
  },
  'run-unknown-recipe': { args: ['run', '--recipe', 'any-pag', '--out', 'out', 'label.pdf'], code: 2, before: oneLabel },
  'run-config-errors': { args: ['run'], code: 2, before: wrongPipeline },
  'run-no-such-config': plain(['run', '--config', 'monday.yaml'], 2),

  'run-done': { args: ['run'], code: 0, before: twoChannels },
  'run-held': { args: ['run'], code: 1, before: mixed },
  'run-dry': { args: ['run', '--recipe', 'label-pages', '--out', 'out', '--dry-run', 'label.pdf'], code: 0, before: oneLabel },
  'run-quiet': { args: ['run', '--recipe', 'label-pages', '--out', 'out', '--quiet', 'label.pdf'], code: 0, before: oneLabel },
  'run-recipe': {
    args: ['run', '--recipe', 'any-page', '--out', 'today/out', '--media', '100x150mm', '--grid', '300dpi', 'mugs', 'a label.pdf'],
    code: 0,
    before: (folder) => put(folder, ['a label.pdf', 'page-4x6'], ['mugs/monday/order 1.pdf', 'a4-two-labels', 'bilevel', 90]),
  },
  'run-no-such-file': { args: ['run', '--recipe', 'any-page', '--out', 'out', 'lable.pdf'], code: 3, before: oneLabel },
  'run-nothing-matches': { args: ['run', '--recipe', 'any-page', '--out', 'out', '*.png'], code: 0, before: oneLabel },

  'draft-without-files': plain(['draft'], 2),
  'draft-no-such-file': { args: ['draft', 'lable.pdf'], code: 3, before: oneLabel },
  'draft-two-samples': {
    args: ['draft', 'mugs'],
    code: 0,
    before: (folder) => put(folder, ['mugs/order 1.pdf', 'label-then-slip'], ['mugs/order 2.pdf', 'label-then-slip', 'bilevel']),
  },
  'draft-one-unreadable': {
    args: ['draft', 'order 1.pdf', 'order 2.pdf', 'order 3.pdf'],
    code: 1,
    before: async (folder) => {
      await put(folder, ['order 1.pdf', 'letter-upper-sideways'], ['order 2.pdf', 'letter-upper-sideways', 'grey']);
      write(join(folder, 'order 3.pdf'), '%PDF-1.7\n% that is all\n');
    },
  },
  'draft-nothing-passes': {
    args: ['draft', 'order 1.pdf', 'order 2.pdf'],
    code: 1,
    before: (folder) => put(folder, ['order 1.pdf', 'letter-ninety-percent'], ['order 2.pdf', 'letter-upper-sideways']),
  },
  'draft-orders': {
    args: ['draft', '--orders', 'orders.csv'],
    code: 0,
    before: (folder) => {
      write(
        join(folder, 'orders.csv'),
        'Order number;Date;Status;Recipient;Street;Town;State;ZIP;Country;Item no.;Item;Pieces;Weight\n' +
          'MUG-1;25/04/2026;paid;Ada Example;1 Sample Street;Springfield;MA;01101;US;M-BLUE;Mug, blue;2;0.4\n' +
          'MUG-2;03/05/2026;in the kiln;Eve Example;2 Sample Street;Springfield;MA;1101;US;M-RED;Mug, red;1;0.4\n',
      );
    },
  },
  'draft-orders-no-number': {
    args: ['draft', '--orders', 'stock.csv'],
    code: 1,
    before: (folder) => {
      write(join(folder, 'stock.csv'), 'Colour,Shelf\nblue,left\nred,right\n');
    },
  },
  'draft-orders-no-such-file': plain(['draft', '--orders', 'orders.csv'], 3),
  'draft-orders-and-documents': plain(['draft', '--orders', 'orders.csv', 'label.pdf'], 2),
  'draft-wrong-values': { args: ['draft', '--media', '4x6inch', '--grid', '203dp', 'label.pdf'], code: 2, before: oneLabel },

  'explain-without-files': plain(['explain'], 2),
  'explain-no-such-file': { args: ['explain', 'lable.pdf'], code: 3, before: oneLabel },
  'explain-wrong-values': {
    args: ['explain', '--media', '4x6inch', '--grid', '203dp', '--picture', 'page.pdf', 'label.pdf'],
    code: 2,
    before: oneLabel,
  },
  'explain-unknown-recipe': { args: ['explain', '--recipe', 'any-pag', 'label.pdf'], code: 2, before: oneLabel },
  'explain-known-failure': {
    args: ['explain', '--picture', 'page.png', 'order 1.pdf'],
    code: 0,
    before: (folder) => put(folder, ['order 1.pdf', 'letter-upper-sideways']),
  },
  'explain-several': {
    args: ['explain', 'inbox', '--media', '100x150mm', '--grid', '300dpi'],
    code: 0,
    before: (folder) =>
      put(
        folder,
        ['inbox/order 1.pdf', 'page-4x6'],
        ['inbox/order 2.pdf', 'label-then-slip'],
        ['inbox/order 3.pdf', 'letter-ninety-percent'],
        ['inbox/order 4.pdf', 'letter-cut-line'],
      ),
  },
  'explain-json': {
    args: ['explain', '--json', '--picture', 'page.png', 'order 1.pdf', 'order 2.pdf'],
    code: 1,
    before: async (folder) => {
      await put(folder, ['order 1.pdf', 'letter-upper-sideways']);
      write(join(folder, 'order 2.pdf'), '%PDF-1.7\n% that is all\n');
    },
  },
  'explain-json-without-files': plain(['explain', '--json'], 2),

  ruler: plain(['ruler'], 0),
  'ruler-elsewhere': plain(['ruler', '--media', 'a6', '--grid', '12dpmm', '--out', 'rulers/a6.pdf'], 3),
  'ruler-wrong-values': plain(['ruler', '--media', '4x6inch', '--grid', '203dp'], 2),
  'ruler-too-small': plain(['ruler', '--media', '62x29mm'], 2),
  'ruler-over-another-file': { args: ['ruler', '--out', 'label.pdf'], code: 2, before: oneLabel },

  'run-json': { args: ['run', '--json', '--jobs', '1'], code: 1, before: mixed },
  'run-json-config-errors': { args: ['run', '--json'], code: 2, before: wrongPipeline },
  'run-json-unknown-option': plain(['run', '--json', '--jbos', '2'], 2),
  'check-json-config-errors': { args: ['check', '--json'], code: 2, before: wrongPipeline },
  'check-json-unknown-option': plain(['check', '--json', '--bogus'], 2),
  'steps-json-unknown-option': plain(['steps', '--json', '--bogus'], 2),
};
