import { mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { STUDIO } from '../../samples/names.js';
import { exportFiles, ordersBlock } from './exports.js';
import { CARRIER_OF, drawFiles, folderOf, type DayFile } from './files.js';
import { MANY, PAIRS, PICTURES, SHEETS, SINGLES, type RunDay, type RunOrder } from './run-day.js';

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

/** The channels that have anything in these files, and what kinds of files those are. */
function pipeline(paths: readonly string[], stackOrder: readonly string[]): string {
  const channels = [SHEETS, MANY, PAIRS, PICTURES, SINGLES].flatMap((channel) => {
    const folder = folderOf(channel);
    const own = paths.filter((path) => path.startsWith(`${folder}/`));
    const kinds = ['pdf', 'png'].filter((kind) => own.some((path) => path.endsWith(kind)));
    if (kinds.length === 0) return [];
    return `  - name: ${folder}
    files: [${kinds.map((kind) => `inbox/${folder}/*.${kind}`).join(', ')}]
    orders: inbox/${folder}/orders-*
    carrier: ${CARRIER_OF[channel] ?? ''}
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
stack-order: [${stackOrder.join(', ')}]
lists: letter
channels:
${channels.join('')}`;
}

function writerOf(folder: string): (path: string, data: string | Uint8Array) => void {
  const lastNight = new Date(Date.now() - 8 * 3600 * 1000);
  return (path, data) => {
    const full = join(folder, path);
    mkdirSync(dirname(full), { recursive: true });
    writeFileSync(full, data);
    utimesSync(full, lastNight, lastNight);
  };
}

/** Writes the order files of all channels, these orders in this order. */
export function writeExports(folder: string, orders: readonly RunOrder[]): void {
  const write = writerOf(folder);
  for (const { path, text } of exportFiles(orders)) write(`inbox/${path}`, text);
}

/** Writes the day's downloads, exports, recipes and pipeline under `folder`, as old as last night's; gives the label files. */
export async function writeDay(folder: string, day: RunDay): Promise<readonly DayFile[]> {
  const files = await drawFiles(day.labels);
  const write = writerOf(folder);
  for (const { path, bytes } of files) write(`inbox/${path}`, bytes);
  writeExports(folder, day.orders);
  for (const channel of [SHEETS, MANY, PAIRS, PICTURES, SINGLES]) write(`recipes/${folderOf(channel)}.yaml`, recipe(channel));
  write(
    'pipeline.yaml',
    pipeline(
      files.map(({ path }) => path),
      day.stackOrder,
    ),
  );
  return files;
}
