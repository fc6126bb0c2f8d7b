import type { Edge, Kind } from '../foreign/kit/page.js';
import type { Box, Family, Shape, Turn } from '../foreign/kit/shapes.js';
import { place } from '../foreign/kit/shapes.js';
import { column } from './beside.js';
import { Choices } from './choices.js';
import { Sheet } from './ink.js';
import { randomLabel, type LabelArt } from './label.js';
import { pageWithout } from './without.js';
import { matter } from './words.js';

/** How a label becomes pixels: dots an inch, and the kind of pixels. */
export interface AsPicture {
  readonly dpi: number;
  readonly ink: 'bilevel' | 'grey' | 'jpeg';
  /** The pixels are stored as they lie on the page; else the picture is turned. */
  readonly stored: boolean;
}
export interface Scan {
  readonly dpi: number;
  readonly skew: number;
  /** The grey of the paper, 255 white, and the standard deviation of its noise. */
  readonly paper: number;
  readonly noise: number;
  readonly bilevel: boolean;
}

export interface RandomLabel {
  readonly label: LabelArt;
  readonly x: number;
  readonly y: number;
  readonly turn: Turn;
  readonly scale: number;
  readonly picture: AsPicture | undefined;
  readonly edge: Edge;
  /** Outer side of its printed line, or the page; undefined where all ink counts (or the picture's edge). */
  readonly box: Box | undefined;
}
export interface RandomPage {
  readonly seed: number;
  readonly kind: Kind;
  readonly width: number;
  readonly height: number;
  readonly rotate: Turn;
  readonly labels: readonly RandomLabel[];
  readonly others: readonly Shape[];
  readonly scan: Scan | undefined;
  readonly fonts: Partial<Record<Family, string>>;
  /** What was chosen, by name. */
  readonly made: Readonly<Record<string, string>>;
}

const PAPERS = {
  letter: [612, 792],
  a4: [595.28, 841.89],
  a5: [419.53, 595.28],
  legal: [612, 1008],
  'letter lying': [792, 612],
  'a4 lying': [841.89, 595.28],
  'a5 lying': [595.28, 419.53],
} as const;
const FONTS: readonly Partial<Record<Family, string>>[] = [
  {},
  {},
  { sans: 'DejaVu Sans', serif: 'DejaVu Serif', mono: 'DejaVu Sans Mono' },
  { sans: 'Noto Sans', serif: 'Noto Serif', mono: 'Noto Sans Mono' },
  { sans: 'Nimbus Sans', serif: 'Nimbus Roman', mono: 'Nimbus Mono PS' },
  { sans: 'Lato' },
  { sans: 'Liberation Sans Narrow' },
];

/** The page of a seed. The same seed gives the same page. */
export function randomPage(seed: number): RandomPage {
  const pick = new Choices(seed * 7919 + 13);
  for (let k = 0; k < 8; k++) pick.next();
  const fonts = pick.of(FONTS);
  const scan = pick.chance(0.12) ? randomScan(pick) : undefined;
  pick.note('page as', scan ? (scan.bilevel ? 'scan 1 bit' : 'scan grey') : 'drawn');
  if (scan) pick.note('skew', Math.abs(scan.skew) < 0.05 ? '0' : Math.abs(scan.skew) < 1 ? 'below 1' : '1 to 3');
  const rotate: Turn = pick.chance(0.75) || scan ? 0 : pick.of([90, 180, 270] as const);
  pick.note('page turned', String(rotate));
  const base = { seed, rotate, scan, fonts };
  if (pick.chance(0.22)) {
    const made = pageWithout(pick);
    return { ...base, ...made, labels: [], made: pick.made };
  }
  const own = pick.chance(0.22);
  const page = own ? labelPaper(pick) : largePage(pick);
  return { ...base, kind: 'label', ...page, made: pick.made };
}

function randomScan(pick: Choices): Scan {
  const bilevel = pick.chance(0.3);
  return {
    dpi: pick.of(bilevel ? [200, 300] : [150, 200, 200]),
    skew: pick.chance(0.25) ? 0 : pick.size(-3, 3),
    paper: pick.between(232, 255),
    noise: pick.between(2, 9),
    bilevel,
  };
}

function picture(pick: Choices): AsPicture | undefined {
  if (pick.made['page as'] !== 'drawn' || pick.chance(0.72)) {
    pick.note('label as', pick.made['page as'] === 'drawn' ? 'vector' : 'scan');
    return undefined;
  }
  const ink = pick.weighed({ bilevel: 4, grey: 2, jpeg: 1 });
  const dpi = ink === 'bilevel' ? pick.of([203, 203, 300]) : pick.of([200, 203, 300]);
  pick.note('label as', `${ink} ${dpi}`);
  return { dpi, ink, stored: pick.chance(0.5) };
}

const sizeOf = ({ art }: LabelArt, turn: Turn, scale: number): { width: number; height: number } => art.bounds(turn, scale);

/** Where the label's line lies on the page, or its picture. */
function placed(label: LabelArt, x: number, y: number, turn: Turn, scale: number, as: AsPicture | undefined): RandomLabel {
  const size = sizeOf(label, turn, scale);
  const lined = label.edge !== 'ink';
  const edge = lined ? label.edge : as ? 'picture' : 'ink';
  return { label, x, y, turn, scale, picture: as, edge, box: edge === 'ink' ? undefined : { x, y, ...size } };
}

/** A page of the label's own size, or a little larger: label paper. */
function labelPaper(pick: Choices): Pick<RandomPage, 'width' | 'height' | 'labels' | 'others'> {
  const as = picture(pick);
  const told = matter(pick);
  const label = randomLabel(pick, told, as && 72 / as.dpi);
  const fills = pick.kept('paper margin', { none: label.edge === 'ink' ? 0.3 : 2, even: 3, odd: 1 });
  pick.note('paper', 'its own');
  pick.note('place', 'its own paper');
  const { width: w, height: h } = label.art;
  // With a margin the page keeps the size and the label becomes smaller, as software that fits it to the page does it.
  const margin = fills === 'none' ? 0 : pick.size(5, 12);
  const scale = (w - 2 * margin) / w;
  const turn = pick.kept('label turned', { 0: 6, 90: 1, 180: 1, 270: 1 });
  const quarter = Number(turn) as Turn;
  const [width, height] = quarter % 180 === 0 ? [w, h] : [h, w];
  const size = sizeOf(label, quarter, scale);
  const [x, y] = [(width - size.width) / 2, fills === 'odd' ? margin / 2 : (height - size.height) / 2];
  const made = placed(label, x, y, quarter, scale, as);
  pick.note('scale', scaleName(scale));
  // A scan of nothing but a label's paper ends where the paper does.
  const isScan = pick.made['page as'] !== 'drawn' && made.edge === 'ink';
  const all = isScan ? { ...made, edge: 'picture' as const, box: { x: 0, y: 0, width, height } } : made;
  return { width, height, labels: [all], others: [] };
}
const scaleName = (scale: number): string => (scale === 1 ? '1' : scale < 0.95 ? '0.85 to 0.95' : scale < 1 ? '0.95 to 1' : 'above 1');

function largePage(pick: Choices): Pick<RandomPage, 'width' | 'height' | 'labels' | 'others'> {
  const told = matter(pick);
  const as = picture(pick);
  const label = randomLabel(pick, told, as && 72 / as.dpi);
  const scale = pick.chance(0.6) ? 1 : pick.between(85, 110) / 100;
  pick.note('scale', scaleName(scale));
  const turn = Number(pick.kept('label turned', { 0: 6, 90: 3, 180: 0.5, 270: 3 })) as Turn;
  const size = sizeOf(label, turn, scale);
  const names = (Object.keys(PAPERS) as (keyof typeof PAPERS)[]).filter(
    (each) => PAPERS[each][0] >= size.width + 30 && PAPERS[each][1] >= size.height + 30,
  );
  const weights = { letter: 5, a4: 5, a5: 2, legal: 1, 'letter lying': 1, 'a4 lying': 1, 'a5 lying': 1 };
  const paper = pick.weighed(Object.fromEntries(names.map((name) => [name, weights[name]])) as Record<keyof typeof PAPERS, number>);
  pick.note('paper', paper);
  const [width, height] = PAPERS[paper];
  const margin = pick.between(14, 48);
  const [free, below] = [width - size.width, height - size.height];
  const where = pick.kept('place', { corner: 3, 'middle of top': 3, 'middle of page': 2, anywhere: 3, 'middle of bottom': 1 });
  const near = (room: number): number => Math.min(margin, room / 2);
  const [x, y] = {
    corner: [pick.chance(0.5) ? near(free) : free - near(free), pick.chance(0.5) ? near(below) : below - near(below)],
    'middle of top': [free / 2, near(below)],
    'middle of page': [free / 2, below / 2],
    'middle of bottom': [free / 2, below - near(below)],
    anywhere: [pick.size(near(free), free - near(free)), pick.size(near(below), below - near(below))],
  }[where] as [number, number];
  const labels = [placed(label, x, y, turn, scale, as)];
  const others = surroundings(pick, told, { width, height }, { x, y, ...size });
  return { width, height, labels, others };
}

/** What stands around a label: above, below, and at its sides, each from a list of things; lines to fold or cut along; a browser's lines. */
function surroundings(pick: Choices, told: ReturnType<typeof matter>, page: { width: number; height: number }, label: Box): Shape[] {
  const shapes: Shape[] = [];
  const gap = pick.between(12, 40);
  pick.note('gap', gap < 20 ? 'below 20 pt' : gap < 30 ? '20 to 30 pt' : '30 to 40 pt');
  const edge = pick.between(18, 40);
  const browser = pick.chance(0.15) && label.y > 34 && page.height - label.y - label.height > 30;
  pick.note('browser lines', String(browser));
  const [top, bottom] = browser ? [26, 26] : [0, 0];
  const right = label.x + label.width;
  const low = label.y + label.height;
  const all: Record<string, Box> = {
    above: { x: edge, y: edge + top, width: page.width - 2 * edge, height: label.y - gap - edge - top },
    below: { x: edge, y: low + gap, width: page.width - 2 * edge, height: page.height - edge - bottom - low - gap },
    left: { x: edge, y: label.y, width: label.x - gap - edge, height: label.height },
    right: { x: right + gap, y: label.y, width: page.width - edge - right - gap, height: label.height },
  };
  const used: string[] = [];
  const share = pick.of([0, 0.5, 0.8, 1]);
  for (const [side, box] of Object.entries(all)) {
    if (box.width < 130 || box.height < 50 || !pick.chance(share)) continue;
    const made = column(pick, told, box.width, box.height);
    shapes.push(...place(made.art.shapes, made.art, { x: box.x, y: box.y }));
    used.push(side);
    for (const name of made.names) pick.note(`beside: ${name}`, 'yes');
  }
  pick.note('beside', used.length === 0 ? 'nothing' : used.join('+'));
  const fold = pick.kept('fold line', { none: 4, dashed: 2, solid: 1, scissors: 1 });
  const y = used.includes('above') && !used.includes('below') ? label.y - gap / 2 : low + gap / 2;
  if (fold !== 'none' && y > 10 && y < page.height - 10) {
    const art = new Sheet(page.width, page.height);
    const inset = pick.of([0, 0, edge]);
    art.line(inset, y, page.width - inset, y, {
      line: pick.of([0.4, 0.75]),
      stroke: pick.of(['#000000', '#888888']),
      ...(fold === 'solid' ? {} : { dash: [4, 3] }),
    });
    if (fold === 'scissors')
      art
        .rect(page.width * 0.45, y - 5, 76, 10, { fill: '#ffffff' })
        .text(page.width * 0.45 + 38, y + 3, told.words.fold, { size: 7.5, anchor: 'middle', fit: 70 });
    shapes.push(...art.shapes);
  }
  if (browser) {
    const art = new Sheet(page.width, page.height);
    art
      .text(20, 18, told.day, { size: 7 })
      .text(page.width / 2, 18, `${told.words.slip[3]} ${told.parcel.order}`, { size: 7, anchor: 'middle' });
    art
      .text(20, page.height - 12, 'https://www.shop.example/orders/print', { size: 7 })
      .text(page.width - 20, page.height - 12, '1/1', { size: 7, anchor: 'end' });
    shapes.push(...art.shapes);
  }
  return shapes;
}
