import { mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { CARRIERS, STUDIO } from '../../samples/names.js';
import { exportFiles, ordersBlock } from './exports.js';
import { drawFiles, folderOf, type DayFile } from './files.js';
import { MANY, PAIRS, PICTURES, SHEETS, SINGLES, type RunDay } from './run-day.js';

const STEPS: Readonly<Record<number, string>> = {
  [SHEETS]: 'split-pages|locate-label: { place: upper-half, by: [frame, picture, ink] }|rotate: upright|scale|packing-slip: from-orders',
  [MANY]: 'split-pages|locate-label: { by: [page] }|rotate: upright|scale|packing-slip: from-orders',
  [PAIRS]:
    'split-pages: { labels: odd, slips: even }|locate-label: { by: [page] }|rotate: upright|scale|packing-slip: { from: next-page, readable: 6pt }',
  [PICTURES]: 'split-pages|locate-label: { by: [page] }|rotate: upright|scale|packing-slip: from-orders',
  [SINGLES]:
    'split-pages: { by: content, return-words: [return label] }|locate-label: { by: [page] }|rotate: upright|scale|packing-slip: from-orders|customs-form',
};

const recipe = (channel: number): string =>
  `about: A channel of the day.\n${ordersBlock(channel)}steps:\n${[...(STEPS[channel] ?? '').split('|'), 'verify', 'number'].map((step) => `  - ${step}\n`).join('')}`;

/** By channel. One label of the last comes as a picture, too. */
const KINDS = [['pdf'], ['pdf'], ['pdf'], ['png'], ['pdf', 'png']];

const CARRIER = [CARRIERS.tidewick, CARRIERS.fernwhistle, CARRIERS.norrvane, CARRIERS.overmoor, CARRIERS.kestomar];

function pipeline(): string {
  const channels = [SHEETS, MANY, PAIRS, PICTURES, SINGLES].map((channel) => {
    const folder = folderOf(channel);
    return `  - name: ${folder}
    files: [${(KINDS[channel] ?? []).map((kind) => `inbox/${folder}/*.${kind}`).join(', ')}]
    orders: inbox/${folder}/orders-*
    carrier: ${CARRIER[channel] ?? ''}
    recipe: recipes/${folder}.yaml
`;
  });
  return `media: 4x6in
grid: 203dpi
out: out
jobs: 2
studio:
  name: ${STUDIO}
  contact: [7 Example Street, Sampleton XX 00001, 555-0142]
stack-order: [ship-by, order-number]
lists: letter
channels:
${channels.join('')}`;
}

/** Writes the day's downloads, exports, recipes and pipeline under `folder`, as old as last night's; gives the label files. */
export async function writeDay(folder: string, day: RunDay): Promise<readonly DayFile[]> {
  const files = await drawFiles(day.labels);
  const lastNight = new Date(Date.now() - 8 * 3600 * 1000);
  const write = (path: string, data: string | Uint8Array): void => {
    const full = join(folder, path);
    mkdirSync(dirname(full), { recursive: true });
    writeFileSync(full, data);
    utimesSync(full, lastNight, lastNight);
  };
  for (const { path, bytes } of files) write(`inbox/${path}`, bytes);
  for (const { path, text } of exportFiles(day.orders)) write(`inbox/${path}`, text);
  for (const channel of [SHEETS, MANY, PAIRS, PICTURES, SINGLES]) write(`recipes/${folderOf(channel)}.yaml`, recipe(channel));
  write('pipeline.yaml', pipeline());
  return files;
}
