import type { LabelContent } from '../../samples/content.js';
import { Drawing } from '../../samples/drawing.js';
import { fernwhistle } from '../../samples/labels/fernwhistle.js';
import { kestomar } from '../../samples/labels/kestomar.js';
import { norrvane } from '../../samples/labels/norrvane.js';
import { overmoor } from '../../samples/labels/overmoor.js';
import { tidewick } from '../../samples/labels/tidewick.js';
import { label, layout, LETTER, other, slip, type LayoutPage } from '../../samples/layout.js';
import { packingSlip, receipt } from '../../samples/other-pages.js';
import { sample } from '../../samples/sample.js';
import { CARRIERS, CHANNELS, STUDIO } from '../../samples/names.js';
import { CHANNEL_NUMBERS, PAIRS, PICTURES, SHEETS, type RunLabel } from './run-day.js';

export interface DayFile {
  readonly path: string;
  readonly bytes: Uint8Array;
  /** The labels in it, by page. */
  readonly labels: readonly RunLabel[];
}

export const folderOf = (channel: number): string => (CHANNELS[channel] ?? '').toLowerCase();

/** By channel. */
export const CARRIER_OF: readonly string[] = [
  CARRIERS.tidewick,
  CARRIERS.fernwhistle,
  CARRIERS.norrvane,
  CARRIERS.overmoor,
  CARRIERS.kestomar,
];

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
    const isAlone = ({ spoiled, fileName }: RunLabel): boolean => spoiled !== undefined || fileName !== undefined;
    const alone = own.filter(isAlone);
    const rest = own.filter((each) => !isAlone(each));
    const step = IN_ONE[channel] ?? 1;
    const groups = rest.flatMap((_, at) => (at % step === 0 ? [rest.slice(at, at + step)] : []));
    for (const group of [...groups, ...alone.map((each) => [each])]) files.push(...(await drawFile(channel, group)));
  }
  return files;
}

async function drawFile(channel: number, labels: readonly RunLabel[]): Promise<readonly DayFile[]> {
  const [first] = labels;
  if (!first) return [];
  const name = `${folderOf(channel)}/${first.fileName ?? `download ${String(first.serial).padStart(4, '0')}`}`;
  const isPicture = channel === PICTURES || first.spoiled === 'as-picture';
  const pages = labels.flatMap((each) => pagesOf(channel, each));
  // Pictures are kept by the layout's name: no other day may have one of that name.
  const made = layout({
    name: `${name} ${first.content.serial}`,
    about: name,
    traits: isPicture ? ['picture-file'] : [],
    pages: () => pages,
  });
  const { bytes } = await sample(made, isPicture ? 'bilevel' : 'vector', 0);
  const path = `${name}.${isPicture ? 'png' : 'pdf'}`;
  if (first.spoiled === 'cut-off') return [{ path, bytes: bytes.slice(0, Math.floor(bytes.length * 0.6)), labels }];
  const again = path.replace(/(?=\.\w+$)/, ' again');
  if (first.spoiled === 'file-twice') return [{ path, bytes, labels }, { path: again, bytes, labels }]; // prettier-ignore
  // PDF, 7.5.5: a comment may stand behind the end of the file.
  if (first.spoiled === 'drawn-again') return [{ path, bytes, labels }, { path: again, bytes: Buffer.concat([bytes, Buffer.from('% again\n')]), labels }]; // prettier-ignore
  return [{ path, bytes, labels }];
}

function pagesOf(channel: number, each: RunLabel): LayoutPage[] {
  const art = spoil(artOf(each), each);
  if (channel === SHEETS) return [{ ...LETTER, regions: [label(art, 90, 50, 90), other(receipt(540, 300, each.content), 36, 420)] }];
  const own: LayoutPage = { width: 288, height: 432, regions: [label(art, 0, 0)] };
  const form: LayoutPage = { width: 288, height: 432, regions: [other(customsForm(each.content), 0, 0)] };
  if (each.kind === 'form') return [form];
  if (each.kind === 'with-form') return [own, form];
  if (each.kind === 'return') art.text(150, 64, 'RETURN LABEL', { size: 12, bold: true });
  return channel === PAIRS && each.kind !== 'return'
    ? [own, { ...LETTER, regions: [slip(packingSlip(540, 400, each.slipOf ?? each.content), 36, 36)] }]
    : [own];
}

/** A customs form as large as a label, as it comes on a page behind it. */
function customsForm({ order, items, mark }: LabelContent): Drawing {
  const d = new Drawing(288, 432);
  d.text(16, 34, 'CUSTOMS DECLARATION', { size: 16, bold: true });
  d.text(16, 50, mark, { size: 8 });
  d.frame(12, 60, 264, 340, 1);
  d.text(20, 78, 'Sender', { size: 8 });
  d.block(20, 92, [STUDIO, '7 Example Street', 'Sampleton XX 00001'], { size: 9 }, 1.4);
  d.line(12, 140, 276, 140, 0.75);
  d.text(20, 156, 'Detailed description of contents', { size: 8 });
  d.block(20, 174, items, { size: 9 }, 1.6);
  d.text(20, 330, 'Category of item: sale of goods', { size: 9 });
  d.text(20, 350, `Sender's reference ${order}`, { size: 9 });
  d.text(20, 390, "Date and sender's signature", { size: 8 });
  return d;
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
