import type { CodeArt } from '../code-art.js';
import type { Box } from '../foreign/kit/shapes.js';
import type { Choices } from './choices.js';
import type { Sheet } from './ink.js';
import { routingCode, type Matter } from './words.js';

/** A part of a label from side to side. `min` pt high at least; what is left over goes by `grow`. */
export interface Band {
  readonly name: string;
  readonly min: number;
  readonly grow: number;
  readonly draw: (art: Sheet, box: Box) => void;
}

/** How a label is set: `pad` pt from its sides, type `big` times as large as usual. */
export interface Style {
  readonly pad: number;
  readonly big: number;
}

const DOT = 72 / 203.2;

/** A linear code in the middle of a box, its clear paper kept; false where it is too wide. */
export function barsIn(art: Sheet, code: CodeArt, box: Box, pick: Choices, upright = true): boolean {
  const dot = art.dot ?? DOT;
  const run = upright ? box.width : box.height;
  const widths = (art.dot !== undefined && art.dot < 0.3 ? [4, 5, 3] : pick.chance(0.7) ? [3, 4, 2] : [2, 3, 4]).map((dots) => dots * dot);
  const module = widths.find((each) => (code.columns + 20) * each <= run);
  if (module === undefined) return false;
  const long = code.columns * module;
  if (upright) art.symbol(code, box.x + (box.width - long) / 2, box.y, module, box.height);
  else art.symbol(code, box.x, box.y + (box.height - long) / 2, module, box.width, 90);
  return true;
}

/** A square or stacked code as large as it may be; gives its width. */
export function squareIn(art: Sheet, code: CodeArt, box: Box, right: boolean): number {
  const dot = art.dot ?? DOT;
  const most = Math.min(box.width / code.columns, box.height / (code.rows * code.modulesPerRow));
  const module = Math.max(2, Math.min(Math.floor(most / dot), Math.round(1.8 / dot))) * dot;
  const [width, height] = [code.columns * module, code.rows * code.modulesPerRow * module];
  art.symbol(code, right ? box.x + box.width - width : box.x, box.y + Math.max(0, (box.height - height) / 2), module, 0);
  return width;
}

export function headBand(pick: Choices, { carrier, words, parcel, day }: Matter, { pad, big }: Style): Band {
  const kind = pick.kept('head', { letter: 3, mark: 3, filled: 3, logo: 2, weights: 2 });
  const service = words.label[3];
  const boxed = pick.chance(0.5);
  const grey = pick.of(['#000000', '#000000', '#333333', '#666666']);
  const min = { letter: 58, mark: 26 * big, filled: 30 * big, logo: 34 * big, weights: 52 * big }[kind];
  return {
    name: 'head',
    min,
    grow: kind === 'letter' || kind === 'weights' ? 0.4 : 0.1,
    draw: (art, { x, y, width: w, height: h }) => {
      const middle = y + h / 2;
      if (kind === 'letter') {
        const cell = Math.min(h, 76);
        art.text(x + cell / 2, middle + h * 0.27, carrier.slice(0, 1), { size: h * 0.76, bold: true, anchor: 'middle' });
        art.line(x + cell, y, x + cell, y + h, { line: 1 });
        art.lines(x + cell + 8, y + 17, [carrier, `${words.label[2]} ${parcel.weight}`, day], {
          size: 9 * big,
          leading: 12.5 * big,
          fit: w * 0.38,
        });
        if (boxed && w > 230) {
          art.rect(x + w - pad - 76, y + 6, 70, h - 12, { line: 0.8 });
          art.lines(x + w - pad - 41, y + 19, ['NO POSTAGE', 'SAMPLE', parcel.order], {
            size: 7.5,
            leading: 10.5,
            anchor: 'middle',
            fit: 62,
          });
        }
      } else if (kind === 'filled') {
        art.rect(x, y, w, h, { fill: grey });
        art.text(x + Math.max(pad, 8), middle + 6 * big, carrier, { size: 17 * big, bold: true, fill: '#ffffff', fit: w * 0.45 });
        art.text(x + w - Math.max(pad, 8), middle + 4, service, { size: 11 * big, fill: '#ffffff', anchor: 'end', fit: w * 0.42 });
      } else if (kind === 'weights') {
        art.lines(x + pad, y + 13, parcel.from, { size: 8 * big, leading: 9.8 * big, fit: w * 0.55 });
        art.lines(x + w - pad, y + 13, [parcel.weight, '1 OF 1', day], {
          size: 9 * big,
          leading: 12 * big,
          anchor: 'end',
          bold: true,
          fit: w * 0.3,
        });
      } else {
        const radius = kind === 'logo' ? Math.min(14 * big, h / 2 - 2) : 0;
        if (radius > 0)
          art.disc(x + pad + radius, middle, radius).disc(x + pad + radius * 1.2, middle - radius * 0.2, radius * 0.55, '#ffffff');
        art.text(x + pad + (radius > 0 ? 2 * radius + 8 : 0), middle + 7 * big, carrier, { size: 20 * big, bold: true, fit: w * 0.42 });
        art.text(x + w - pad, middle + 5, service, { size: 10 * big, anchor: 'end', fit: w * 0.38 });
      }
    },
  };
}

export function bannerBand(pick: Choices, { words, carrier }: Matter, { big, pad }: Style): Band {
  const filled = pick.chance(0.25);
  const text = pick.chance(0.5) ? words.label[3] : `${carrier} ${words.label[3]}`.toUpperCase();
  return {
    name: 'banner',
    min: 26 * big,
    grow: 0.1,
    draw: (art, { x, y, width: w, height: h }) => {
      if (filled) art.rect(x, y + 2, w, h - 4, { fill: '#000000' });
      const style = { size: 17 * big, bold: true, anchor: 'middle', fit: w - 2 * pad - 12, fill: filled ? '#ffffff' : '#000000' } as const;
      art.text(x + w / 2, y + h / 2 + 6 * big, text, style);
    },
  };
}

export function fromBand(pick: Choices, { parcel, words, day }: Matter, { pad, big }: Style): Band {
  const aside = pick.chance(0.5);
  return {
    name: 'from',
    min: (14 + parcel.from.length * 9.6) * big + 4,
    grow: 0.2,
    draw: (art, { x, y, width: w }) => {
      art.text(x + pad, y + 10 * big, words.label[0], { size: 6.5 * big, bold: true });
      art.lines(x + pad, y + 20 * big, parcel.from, { size: 8 * big, leading: 9.6 * big, fit: w * 0.56 });
      if (!aside) return;
      const rows = [`${words.label[2]} ${parcel.weight}`, day, `${words.label[4]} ${parcel.order}`];
      art.lines(x + w - pad, y + 16 * big, rows, { size: 8 * big, leading: 11 * big, anchor: 'end', fit: w * 0.36 });
    },
  };
}

/** The receiver, large; a square code at one side where there is one. */
export function toBand(pick: Choices, { parcel, words }: Matter, { pad, big }: Style, square: CodeArt | undefined): Band {
  const side = square ? pick.kept('square side', { right: 2, left: 1 }) : 'none';
  const lines = [...parcel.to, ...(pick.chance(0.2) ? [`Tel. 555-01${pick.digits(2)}`] : [])];
  const above = pick.chance(0.6);
  return {
    name: 'to',
    min: Math.max((above ? 34 : 20) * big + lines.length * 15.5 * big, square ? 70 : 0),
    grow: 1,
    draw: (art, { x, y, width: w, height: h }) => {
      const stacked = square !== undefined && square.modulesPerRow > 1;
      const room = stacked ? w * 0.4 : Math.min(92, w * 0.34, h - 10);
      let left = x + pad;
      let wide = w - 2 * pad;
      if (square) {
        const from = side === 'left' ? left : left + wide - room;
        const used = squareIn(art, square, { x: from, y: y + 4, width: room, height: h - 8 }, side === 'right');
        if (side === 'left') left += used + 12;
        wide -= used + 12;
      }
      art.text(left, y + 12 * big, words.label[1], { size: 7 * big, bold: true, fit: wide });
      const first = y + (above ? 29 : 27) * big;
      art.lines(above ? left + 8 : left + 8, first, lines, { size: 12.5 * big, leading: 15.5 * big, fit: Math.max(40, wide - 8) });
    },
  };
}

/** What sorters look at: a large word, cells, or a small code beside it. */
export function routingBand(pick: Choices, told: Matter, { pad, big }: Style): Band {
  const { parcel, carrier } = told;
  const kind = pick.kept('routing', { word: 2, cells: 2, code: 2 });
  const code = routingCode(pick, told);
  return {
    name: 'routing',
    min: kind === 'code' ? 52 : 38 * big,
    grow: 0.4,
    draw: (art, { x, y, width: w, height: h }) => {
      if (kind === 'cells') {
        const cells = [parcel.depot, parcel.postcode, `R${parcel.routing.slice(0, 3)}`, '1/1'];
        for (const [k, cell] of cells.entries()) {
          if (k > 0) art.line(x + (w * k) / 4, y, x + (w * k) / 4, y + h, { line: 0.75 });
          art.text(x + (w * (k + 0.5)) / 4, y + h / 2 + 7, cell, { size: 18 * big, bold: true, anchor: 'middle', fit: w / 4 - 12 });
        }
        return;
      }
      const word = `${carrier.slice(0, 2).toUpperCase()} ${parcel.depot} ${parcel.routing.slice(0, 2)}-${parcel.routing.slice(2, 4)}`;
      const drawn = kind === 'code' && barsIn(art, code, { x: x + w * 0.42, y: y + 8, width: w * 0.58 - pad, height: h - 16 }, pick);
      const size = Math.min(h * 0.62, 34 * big);
      art.text(x + pad, y + h / 2 + size * 0.36, word, { size, bold: true, fit: drawn ? w * 0.38 : w - 2 * pad });
    },
  };
}

/** The tracking number as bars, with a caption and the number in figures. */
export function trackingBand(pick: Choices, told: Matter, { pad, big }: Style): Band {
  const caption = pick.kept('caption', { above: 2, none: 1, left: 1 });
  const below = pick.chance(0.85);
  const thick = pick.chance(0.3) ? pick.size(2, 5) : 0;
  const tall = pick.size(62, 96);
  return {
    name: 'tracking',
    min: tall + (caption === 'none' ? 4 : 16) + (below ? 16 : 4) + 2 * thick,
    grow: 1,
    draw: (art, { x, y, width: w, height: h }) => {
      if (thick > 0) art.rect(x, y, w, thick, { fill: '#000000' }).rect(x, y + h - thick, w, thick, { fill: '#000000' });
      const top = y + thick + (caption === 'none' ? 7 : 18);
      const end = y + h - thick - (below ? 18 : 7);
      const title = `${told.carrier.toUpperCase()} ${told.words.label[4]} #`;
      if (caption === 'above') art.text(x + w / 2, y + thick + 12, title, { size: 8.5 * big, bold: true, anchor: 'middle', fit: w - 20 });
      if (caption === 'left') art.text(x + pad, y + thick + 12, title, { size: 8 * big, fit: w - 20 });
      if (!barsIn(art, told.tracking, { x: x + pad / 2, y: top, width: w - pad, height: end - top }, pick)) {
        art.text(x + w / 2, (top + end) / 2, told.number, { size: 18, bold: true, anchor: 'middle', fit: w - 20 });
      }
      if (below) art.text(x + w / 2, end + 12, told.number, { size: 10 * big, bold: true, anchor: 'middle', fit: w - 12 });
    },
  };
}

export function secondBand(pick: Choices, told: Matter, { pad }: Style): Band {
  const code = routingCode(pick, told);
  const left = pick.chance(0.4);
  return {
    name: 'second code',
    min: 46,
    grow: 0.3,
    draw: (art, { x, y, width: w, height: h }) => {
      const wide = left ? w * 0.6 : w - 2 * pad;
      const drawn = barsIn(art, code, { x: x + pad, y: y + 6, width: wide, height: h - 20 }, pick);
      if (drawn) art.text(x + pad + wide / 2, y + h - 4, told.parcel.routing, { size: 7, family: 'mono', anchor: 'middle' });
      if (left || !drawn) art.lines(x + w * 0.66, y + 16, [told.parcel.depot, told.parcel.postcode], { size: 12, bold: true, leading: 15 });
    },
  };
}

/** References, who pays, what is in it. */
export function rowsBand(pick: Choices, { parcel, words }: Matter, { pad, big }: Style): Band {
  const all = [
    `${words.label[4]} 1: ${parcel.order}`,
    'BILLING: P/P',
    `DESC: ${parcel.goods[0]?.[1] ?? ''}`,
    `${words.label[4]} 2: ${parcel.routing.slice(0, 8)}`,
  ];
  const rows = all.slice(0, pick.between(1, 4));
  return {
    name: 'rows',
    min: (6 + rows.length * 10.5) * big,
    grow: 0.15,
    draw: (art, { x, y, width: w }) => {
      art.lines(x + pad, y + 11 * big, rows, { size: 8 * big, leading: 10.5 * big, fit: w - 2 * pad });
    },
  };
}

export function noticeBand(pick: Choices, { words }: Matter, { pad }: Style): Band {
  const size = pick.size(4.8, 6.5);
  const text = words.small.split('. ').slice(0, pick.between(1, 2)).join('. ');
  return {
    name: 'notice',
    min: 26,
    grow: 0.1,
    draw: (art, { x, y, width: w, height: h }) => {
      const lines = Math.max(1, Math.floor((h - 4) / (size * 1.2)));
      const room = (lines * (w - 2 * pad) * 1.6) / size;
      art.paragraph(x + pad, y + size + 3, w - 2 * pad, text.slice(0, Math.floor(room * 0.9)), { size, leading: size * 1.2 });
    },
  };
}

export const markBand = ({ words }: Matter): Band => ({
  name: 'mark',
  min: 17,
  grow: 0,
  draw: (art, { x, y, width: w }) => {
    art.text(x + w / 2, y + 12, words.mark, { size: 9, bold: true, anchor: 'middle', fit: w - 16 });
  },
});
