import type { Page } from './page.js';
import type { Rect, Shape, Text } from './shapes.js';
import { n } from './svg.js';

interface Drawn extends Page {
  readonly shapes: readonly Shape[];
}
const rgb = (hex: string): string => [1, 3, 5].map((i) => n(Number.parseInt(hex.slice(i, i + 2), 16) / 255)).join(' ');

/** A document for XeTeX, plain TeX, faces by their files: words set by TeX, drawings in its specials. */
export function xetexDocument(pages: readonly Drawn[], faces: Readonly<Record<string, readonly string[]>>): string {
  const out = ['\\nopagenumbers \\hoffset=-1in \\voffset=-1in \\parindent=0pt'];
  for (const page of pages) {
    out.push(`\\pdfpagewidth=${n(page.width)}bp \\pdfpageheight=${n(page.height)}bp`, '\\setbox0=\\vbox to 0pt{\\offinterlineskip');
    for (const shape of page.shapes) {
      const [x, y] = shape.kind === 'text' ? shape.at : [0, 0];
      const inside = shape.kind === 'text' ? words(shape, faces) : drawing(shape);
      out.push(`\\vbox to 0pt{\\kern ${n(y)}bp\\hbox to 0pt{\\kern ${n(x)}bp${inside}\\hss}\\vss}`);
    }
    out.push('\\vss}\\ht0=0pt \\dp0=0pt \\shipout\\box0');
  }
  return `${out.join('\n')}\n\\end\n`;
}

function words(shape: Text, faces: Readonly<Record<string, readonly string[]>>): string {
  const face = faces[shape.family]?.[shape.bold ? 1 : 0] ?? '';
  const text = shape.text.replaceAll(/[#$%&_{}\\^~]/g, (each) => `\\char${each.charCodeAt(0)} `);
  const [before, after] = { start: ['', '\\hss'], middle: ['\\hss', '\\hss'], end: ['\\hss', ''] }[shape.anchor];
  const set = `\\hbox to 0pt{${before}\\font\\f="[${face}]" at ${n(shape.size)}bp \\f ${text}${after}}`;
  const turn = shape.turn + (shape.lean ?? 0);
  const turned = turn === 0 ? set : `\\special{x:gsave}\\special{x:rotate ${n(-turn)}}${set}\\special{x:grestore}`;
  return `\\vbox to 0pt{\\vss\\hbox to 0pt{\\special{color push rgb ${rgb(shape.fill)}}${turned}\\special{color pop}\\hss}\\kern 0pt}`;
}

/** Operators with the page's upper left corner as their origin, y up. */
function drawing(shape: Exclude<Shape, Text>): string {
  const special = (ops: string): string => `\\special{pdf:content ${ops}}`;
  switch (shape.kind) {
    case 'rect': {
      const path = outline(shape);
      const dash = shape.dash?.length ? `[${shape.dash.map(n).join(' ')}] 0 d ` : '';
      const fill = shape.fill === undefined ? '' : `${rgb(shape.fill)} rg ${path} f `;
      return special(fill + (shape.line > 0 ? `${rgb(shape.stroke)} RG ${n(shape.line)} w ${dash}${path} S` : ''));
    }
    case 'line': {
      const dash = shape.dash?.length ? `[${shape.dash.map(n).join(' ')}] 0 d ` : '';
      return special(
        `${rgb(shape.stroke)} RG ${n(shape.line)} w ${dash}${n(shape.from[0])} ${n(-shape.from[1])} m ${n(shape.to[0])} ${n(-shape.to[1])} l S`,
      );
    }
    case 'poly':
      return special(`${rgb(shape.fill)} rg ${shape.points.map(([x, y], i) => `${n(x)} ${n(-y)} ${i === 0 ? 'm' : 'l'}`).join(' ')} h f`);
    case 'disc': {
      const r = shape.radius;
      const round: Rect = {
        kind: 'rect',
        x: shape.at[0] - r,
        y: shape.at[1] - r,
        width: 2 * r,
        height: 2 * r,
        radius: r,
        line: 0,
        stroke: '#000000',
      };
      return special(`${rgb(shape.fill)} rg ${outline(round)} f`);
    }
    case 'picture':
      throw new Error('Pictures are not drawn by TeX here');
  }
}

function outline({ x, y, width: w, height: h, radius: r = 0 }: Rect): string {
  const low = -y - h;
  if (r === 0) return `${[x, low, w, h].map(n).join(' ')} re`;
  const k = 0.4477 * r;
  const c = (...at: number[]): string => `${at.map(n).join(' ')} c`;
  const [right, high] = [x + w, low + h];
  return [
    `${n(x + r)} ${n(low)} m ${n(right - r)} ${n(low)} l ${c(right - k, low, right, low + k, right, low + r)}`,
    `${n(right)} ${n(high - r)} l ${c(right, high - k, right - k, high, right - r, high)}`,
    `${n(x + r)} ${n(high)} l ${c(x + k, high, x, high - k, x, high - r)} ${n(x)} ${n(low + r)} l ${c(x, low + k, x + k, low, x + r, low)} h`,
  ].join(' ');
}

const quoted = (text: string): string =>
  JSON.stringify(text).replaceAll(/[^\x20-\x7e]/g, (each) => `\\u${each.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** A script for R and its PDF device: pages of one size, the device's own Helvetica, Times and Courier, Latin 1 words, no pictures. */
export function rScript(pages: readonly Drawn[], pdf: string): string {
  const [first] = pages;
  if (!first) throw new Error('No pages');
  const out = [
    `pdf(${quoted(pdf)}, width=${n(first.width / 72)}, height=${n(first.height / 72)}, paper="special", encoding="WinAnsi.enc", useDingbats=FALSE, useKerning=FALSE)`,
    'par(mar=c(0,0,0,0), oma=c(0,0,0,0), xpd=NA, lend="butt", ljoin="mitre")',
    'dash <- function(d, w) paste(sprintf("%X", pmax(1, pmin(15, round(d / w * 0.75)))), collapse="")',
  ];
  for (const page of pages) {
    if (page.width !== first.width || page.height !== first.height) throw new Error('Pages of several sizes');
    out.push(`plot.new(); plot.window(xlim=c(0,${n(page.width)}), ylim=c(${n(page.height)},0), xaxs="i", yaxs="i")`);
    for (const s of page.shapes) out.push(rShape(s));
  }
  return `${out.join('\n')}\ninvisible(dev.off())\n`;
}

function rShape(s: Shape): string {
  const ends = (value: readonly number[]): string => `c(${value.map(n).join(',')})`;
  switch (s.kind) {
    case 'rect': {
      const dash = s.dash?.length ? `, lty=dash(${ends(s.dash)}, ${n(s.line)})` : '';
      const border = s.line > 0 ? `"${s.stroke}", lwd=${n((s.line * 96) / 72)}${dash}` : 'NA';
      const fill = s.fill === undefined ? 'NA' : `"${s.fill}"`;
      if ((s.radius ?? 0) > 0) {
        const r = s.radius ?? 0;
        const arc = (cx: number, cy: number, from: number): [number, number][] =>
          Array.from({ length: 9 }, (_, i) => ((from + (i * 90) / 8) * Math.PI) / 180).map((t) => [
            cx + r * Math.cos(t),
            cy + r * Math.sin(t),
          ]);
        const [right, low] = [s.x + s.width - r, s.y + s.height - r];
        const points = [...arc(right, low, 0), ...arc(s.x + r, low, 90), ...arc(s.x + r, s.y + r, 180), ...arc(right, s.y + r, 270)];
        return `polygon(${ends(points.map(([x]) => x))}, ${ends(points.map(([, y]) => y))}, col=${fill}, border=${border})`;
      }
      return `rect(${n(s.x)},${n(s.y + s.height)},${n(s.x + s.width)},${n(s.y)}, col=${fill}, border=${border})`;
    }
    case 'line': {
      const dash = s.dash?.length ? `, lty=dash(${ends(s.dash)}, ${n(s.line)})` : '';
      return `segments(${n(s.from[0])},${n(s.from[1])},${n(s.to[0])},${n(s.to[1])}, col="${s.stroke}", lwd=${n((s.line * 96) / 72)}${dash})`;
    }
    case 'poly':
      return `polygon(${ends(s.points.map(([x]) => x))}, ${ends(s.points.map(([, y]) => y))}, col="${s.fill}", border=NA)`;
    case 'disc':
      return `symbols(${n(s.at[0])},${n(s.at[1])}, circles=${n(s.radius / 72)}, inches=${n(s.radius / 72)}, add=TRUE, bg="${s.fill}", fg=NA)`;
    case 'text': {
      const family = { sans: 'Helvetica', serif: 'Times', mono: 'Courier' }[s.family];
      const back = { start: 0, middle: 0.5, end: 1 }[s.anchor];
      return `text(${n(s.at[0])},${n(s.at[1])}, ${quoted(s.text)}, adj=c(${back},0), cex=${n(s.size / 12)}, font=${s.bold ? 2 : 1}, family="${family}", col="${s.fill}", srt=${n(-s.turn - (s.lean ?? 0))})`;
    }
    case 'picture':
      throw new Error('Pictures are not drawn by R here');
  }
}
