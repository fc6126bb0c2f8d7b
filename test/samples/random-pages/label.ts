import type { Box, Family } from '../foreign/kit/shapes.js';
import * as bands from './bands.js';
import type { Band, Style } from './bands.js';
import type { Choices } from './choices.js';
import { Sheet } from './ink.js';
import { squareCode, type Matter } from './words.js';

export interface LabelArt {
  readonly art: Sheet;
  /** Outermost printed line where one goes all around, else nothing shows but the ink. In the label's own pt. */
  readonly edge: 'frame' | 'cut' | 'ink';
  readonly box: Box | undefined;
}

/** Paper sizes of labels, pt. */
const SIZES = {
  '4x6': [288, 432],
  '100x150': [283.5, 425.2],
  a6: [297.6, 419.5],
  '6x4': [432, 288],
  '4x6.75': [288, 486],
  '4x8': [288, 576],
} as const;

/** Stacks bands from the top; thick and thin lines between them as the label's style has it. */
function stack(art: Sheet, list: readonly Band[], box: Box, rule: (index: number, y: number) => void): void {
  const spare = Math.max(0, box.height - list.reduce((sum, each) => sum + each.min, 0));
  const grow = list.reduce((sum, each) => sum + each.grow, 0) || 1;
  let y = box.y;
  for (const [index, band] of list.entries()) {
    if (index > 0) rule(index, y);
    const height = band.min + (spare * band.grow) / grow;
    band.draw(art, { x: box.x, y, width: box.width, height });
    y += height;
  }
}

/** Bands in a random order, as many as there is room for: what a label can't do without, then the rest. */
function chosenBands(pick: Choices, told: Matter, style: Style, room: number, square: boolean): Band[] {
  const code = square ? squareCode(pick, told) : undefined;
  pick.note('square', code?.name ?? 'none');
  const need = [bands.headBand(pick, told, style), bands.toBand(pick, told, style, code?.art), bands.trackingBand(pick, told, style)];
  const more: Band[] = pick.shuffled([
    bands.routingBand(pick, told, style),
    bands.bannerBand(pick, told, style),
    bands.secondBand(pick, told, style),
    bands.rowsBand(pick, told, style),
    bands.noticeBand(pick, told, style),
  ]);
  if (pick.made['head'] !== 'weights') need.push(bands.fromBand(pick, told, style));
  let left = room - need.reduce((sum, each) => sum + each.min, 0);
  const extra = more.slice(0, pick.between(1, 4)).filter((each) => {
    const fits = each.min <= left;
    if (fits) left -= each.min;
    return fits;
  });
  const [head, ...rest] = [...need, ...extra];
  const last = rest.filter(({ name }) => ['notice', 'rows'].includes(name) && pick.chance(0.8));
  const middle = pick.shuffled(rest.filter((each) => !last.includes(each)));
  // The sender comes before the receiver more often than not.
  const order = pick.chance(0.7) ? middle : [...middle].sort((a, b) => rank(a.name) - rank(b.name));
  pick.note('order', order.map(({ name }) => name[0]).join(''));
  return head ? [head, ...order, ...last] : [];
}
const rank = (name: string): number => ['from', 'to', 'routing', 'tracking'].indexOf(name) + 1;

/** A label of random design. `dot` where it becomes pixels, pt. */
export function randomLabel(pick: Choices, told: Matter, dot: number | undefined): LabelArt {
  const paper = pick.kept('size', { '4x6': 9, '100x150': 3, a6: 2, '6x4': 3, '4x6.75': 1, '4x8': 1 });
  const frame = pick.kept('frame', { box: 5, thin: 2, grey: 1, rounded: 2, double: 1, none: 4, rules: 3, cut: 3, corners: 1 });
  const family: Family = pick.weighed({ sans: 7, serif: 2, mono: 1 });
  const [width, height] = SIZES[paper];
  const art = new Sheet(width, height, family, dot);
  const line = { box: pick.size(0.7, 2.5), thin: 0.4, grey: 0.8, rounded: 1, double: 0.8, none: 0, rules: 0, cut: 0.6, corners: 1.5 }[
    frame
  ];
  const inset = frame === 'cut' || frame === 'corners' ? pick.size(8, 12) : frame === 'double' ? 4 : 0;
  const framed = frame !== 'none' && frame !== 'rules';
  const style: Style = { pad: inset > 4 || !framed ? 0 : pick.size(6, 11), big: pick.size(0.85, 1.1) };
  const rules = frame === 'rules' ? 'all' : pick.kept('rules', { all: 3, some: 2, none: 1 });
  const thickness = pick.of([0.5, 0.75, 1, 1, 1.5, 2]);
  const mark = pick.kept('mark', { foot: 5, side: 1, band: 1, faint: 1 });

  if (mark === 'faint')
    art.text(width / 2, height * 0.55, told.words.mark, {
      size: 24,
      bold: true,
      anchor: 'middle',
      fill: '#dddddd',
      lean: -35,
      fit: width * 0.95,
    });
  const foot = mark === 'foot' || mark === 'band' ? 13 : 0;
  const side = mark === 'side' ? 11 : 0;
  const inner = { x: inset, y: inset, width: width - 2 * inset - side, height: height - 2 * inset - foot };
  const landscape = width > height;
  const ladder = !landscape && inner.width > 250 && pick.chance(0.1);
  pick.note('ladder', String(ladder));
  const rule = (box: Box) => (index: number, y: number) => {
    if (rules === 'none' || (rules === 'some' && index % 2 === 1)) return;
    art.line(box.x, y, box.x + box.width, y, { line: thickness });
  };

  if (landscape) {
    const left = { ...inner, width: inner.width * 0.46 };
    const right = { ...inner, x: inner.x + left.width, width: inner.width - left.width };
    const small = { ...style, big: Math.min(style.big, 0.95) };
    const code = pick.chance(0.5) ? squareCode(pick, told) : undefined;
    pick.note('square', code?.name ?? 'none');
    const lefts = [
      bands.headBand(pick, told, small),
      ...(pick.made['head'] === 'weights' ? [] : [bands.fromBand(pick, told, small)]),
      bands.toBand(pick, told, small, code?.art.modulesPerRow === 1 ? code.art : undefined),
    ];
    stack(art, lefts, left, rule(left));
    const rights = [
      bands.trackingBand(pick, told, small),
      ...(pick.chance(0.6) ? [bands.routingBand(pick, told, small)] : []),
      ...(pick.chance(0.6) ? [bands.rowsBand(pick, told, small)] : []),
    ];
    stack(art, pick.shuffled(rights), right, rule(right));
    if (rules !== 'none') art.line(right.x, inner.y, right.x, inner.y + inner.height, { line: thickness });
  } else if (ladder) {
    const wide = 84;
    const body = { ...inner, width: inner.width - wide };
    const list = chosenBands(pick, told, { ...style, big: Math.min(style.big, 0.95) }, body.height, false).filter(
      ({ name }) => name !== 'tracking',
    );
    stack(art, list, body, rule(body));
    const strip = { x: body.x + body.width + 10, y: inner.y + 8, width: wide - 30, height: inner.height - 16 };
    bands.barsIn(art, told.tracking, strip, pick, false);
    art.text(strip.x + strip.width + 12, strip.y + strip.height / 2, told.number, {
      size: 8.5,
      bold: true,
      anchor: 'middle',
      turn: 90,
      fit: strip.height - 8,
    });
    if (rules !== 'none') art.line(body.x + body.width, inner.y, body.x + body.width, inner.y + inner.height, { line: thickness });
  } else {
    const list = chosenBands(pick, told, style, inner.height - (mark === 'band' ? 17 : 0), pick.chance(0.55));
    if (mark === 'band') list.splice(pick.between(1, list.length), 0, bands.markBand(told));
    stack(art, list, inner, rule(inner));
  }
  if (mark === 'foot' || (mark === 'band' && (landscape || ladder)))
    art.text(inset + style.pad, height - inset - 4, told.words.mark, { size: 7, bold: true, fit: width - 2 * inset - 2 * style.pad - 4 });
  if (mark === 'side')
    art.text(width - inset - 3, height / 2, told.words.mark, { size: 6.5, turn: 270, anchor: 'middle', fit: height * 0.8 });
  return drawEdge(pick, art, frame, line);
}

function drawEdge(pick: Choices, art: Sheet, frame: string, line: number): LabelArt {
  const { width: w, height: h } = art;
  const half = line / 2;
  const around = { x: 0, y: 0, width: w, height: h };
  switch (frame) {
    case 'box':
    case 'thin':
      art.rect(half, half, w - line, h - line, { line });
      return { art, edge: 'frame', box: around };
    case 'grey':
      art.rect(half, half, w - line, h - line, { line, stroke: pick.of(['#777777', '#999999', '#aaaaaa']) });
      return { art, edge: 'frame', box: around };
    case 'rounded':
      art.rect(half, half, w - line, h - line, { line, radius: pick.size(5, 14) });
      return { art, edge: 'frame', box: around };
    case 'double':
      art.rect(half, half, w - line, h - line, { line }).rect(half + 3, half + 3, w - line - 6, h - line - 6, { line: 0.4 });
      return { art, edge: 'frame', box: around };
    case 'cut':
      art.rect(half, half, w - line, h - line, {
        line,
        dash: pick.of([
          [4, 3],
          [6, 4],
          [2, 2],
        ]),
        stroke: pick.of(['#000000', '#666666']),
      });
      return { art, edge: 'cut', box: around };
    case 'corners': {
      const arm = pick.size(10, 20);
      for (const [x, y, dx, dy] of [
        [half, half, 1, 1],
        [w - half, half, -1, 1],
        [half, h - half, 1, -1],
        [w - half, h - half, -1, -1],
      ] as const) {
        art.line(x - dx * half, y, x + dx * arm, y, { line }).line(x, y - dy * half, x, y + dy * arm, { line });
      }
      return { art, edge: 'ink', box: undefined };
    }
    case 'rules': {
      if (pick.chance(0.6)) art.line(0, 1, w, 1, { line: 2 });
      if (pick.chance(0.6)) art.line(0, h - 1, w, h - 1, { line: 2 });
      return { art, edge: 'ink', box: undefined };
    }
    default:
      return { art, edge: 'ink', box: undefined };
  }
}
