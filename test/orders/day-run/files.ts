import type { LabelContent } from '../../samples/content.js';
import type { Drawing } from '../../samples/drawing.js';
import { fernwhistle } from '../../samples/labels/fernwhistle.js';
import { kestomar } from '../../samples/labels/kestomar.js';
import { norrvane } from '../../samples/labels/norrvane.js';
import { overmoor } from '../../samples/labels/overmoor.js';
import { tidewick } from '../../samples/labels/tidewick.js';
import { label, layout, LETTER, other, slip, type LayoutPage } from '../../samples/layout.js';
import { packingSlip, receipt } from '../../samples/other-pages.js';
import { sample } from '../../samples/sample.js';
import { CHANNELS } from '../../samples/names.js';
import { MANY, PAIRS, PICTURES, SHEETS, SINGLES, type RunLabel } from './run-day.js';

export const CHANNEL_NUMBERS = [SHEETS, MANY, PAIRS, PICTURES, SINGLES];

export interface DayFile {
  readonly path: string;
  readonly bytes: Uint8Array;
  /** The labels in it, by page. */
  readonly labels: readonly RunLabel[];
}

export const folderOf = (channel: number): string => (CHANNELS[channel] ?? '').toLowerCase();

const ART: readonly ((content: LabelContent) => Drawing)[] = [tidewick, fernwhistle, norrvane, overmoor, kestomar];
/** The label as its channel draws it, whole. */
export const artOf = ({ channel, content }: RunLabel): Drawing => (ART[channel] ?? tidewick)(content);

/** How many labels a document of the channel holds. */
const IN_ONE = [1, 15, 6, 1, 1];

/** Draws the day's labels as its channels hand them over. */
export async function drawFiles(labels: readonly RunLabel[]): Promise<readonly DayFile[]> {
  const files: DayFile[] = [];
  for (const channel of CHANNEL_NUMBERS) {
    const own = labels.filter((each) => each.channel === channel);
    const alone = own.filter(({ spoiled }) => spoiled !== undefined);
    const rest = own.filter(({ spoiled }) => spoiled === undefined);
    const step = IN_ONE[channel] ?? 1;
    const groups = rest.flatMap((_, at) => (at % step === 0 ? [rest.slice(at, at + step)] : []));
    for (const group of [...groups, ...alone.map((each) => [each])]) files.push(...(await drawFile(channel, group)));
  }
  return files;
}

async function drawFile(channel: number, labels: readonly RunLabel[]): Promise<readonly DayFile[]> {
  const [first] = labels;
  if (!first) return [];
  const name = `${folderOf(channel)}/download ${String(first.serial).padStart(4, '0')}`;
  const isPicture = channel === PICTURES || first.spoiled === 'as-picture';
  const pages = labels.flatMap((each) => pagesOf(channel, each));
  const made = layout({ name, about: name, traits: isPicture ? ['picture-file'] : [], pages: () => pages });
  const { bytes } = await sample(made, isPicture ? 'bilevel' : 'vector', 0);
  const path = `${name}.${isPicture ? 'png' : 'pdf'}`;
  if (first.spoiled === 'cut-off') return [{ path, bytes: bytes.slice(0, Math.floor(bytes.length * 0.6)), labels }];
  if (first.spoiled === 'file-twice')
    return [
      { path, bytes, labels },
      { path: path.replace(/(?=\.\w+$)/, ' again'), bytes, labels },
    ];
  return [{ path, bytes, labels }];
}

function pagesOf(channel: number, each: RunLabel): LayoutPage[] {
  const art = spoil(artOf(each), each);
  if (channel === SHEETS) return [{ ...LETTER, regions: [label(art, 90, 50, 90), other(receipt(540, 300, each.content), 36, 420)] }];
  const own: LayoutPage = { width: 288, height: 432, regions: [label(art, 0, 0)] };
  return channel === PAIRS ? [own, { ...LETTER, regions: [slip(packingSlip(540, 400, each.content), 36, 36)] }] : [own];
}

function spoil(art: Drawing, { spoiled }: RunLabel): Drawing {
  const { items } = art;
  for (const [at, item] of items.entries()) {
    if (spoiled === 'old' && item.kind === 'text' && item.text.startsWith('Ship date')) items[at] = { ...item, text: 'Ship date 20OCT26' };
  }
  if (spoiled !== 'smeared') return art;
  const kept = items.filter((item) => item.kind !== 'code' || item.art.expected.symbology === 'Code 128');
  items.splice(0, items.length, ...kept);
  for (const x of [60, 118, 190]) art.polygon([[x, 288], [x + 22, 288], [x + 34, 376], [x + 8, 376]]); // prettier-ignore
  return art;
}
