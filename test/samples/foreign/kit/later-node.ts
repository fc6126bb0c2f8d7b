/** Programs for Node: pages as JSON on its input with `faces` (files by family and weight), the PDF's path as its argument. NODE_PATH names their folder. */
const READ = String.raw`
const { pages, faces } = JSON.parse(require('fs').readFileSync(0, 'utf8')); const to = process.argv[1];
`;

/** muhammara with embedded faces. */
export const MUHAMMARA = String.raw`${READ}
const m = require('muhammara');
const out = m.createWriter(to);
const rgb = (hex) => [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16) / 255);
const fonts = Object.fromEntries(Object.entries(faces).map(([family, files]) => [family, files.map((file) => out.getFontForFile(file))]));
for (const page of pages) {
  const up = page.height;
  const p = out.createPage(0, 0, page.width, up); const g = out.startPageContentContext(p);
  const curve = (x, y, w, h, r) => {
    const k = 0.4477 * r;
    g.m(x + r, y).l(x + w - r, y).c(x + w - k, y, x + w, y + k, x + w, y + r).l(x + w, y + h - r).c(x + w, y + h - k, x + w - k, y + h, x + w - r, y + h);
    g.l(x + r, y + h).c(x + k, y + h, x, y + h - k, x, y + h - r).l(x, y + r).c(x, y + k, x + k, y, x + r, y).h();
  };
  for (const s of page.shapes) {
    g.q();
    if (s.fill) g.rg(...rgb(s.fill));
    if (s.stroke) g.RG(...rgb(s.stroke));
    if (s.line) g.w(s.line);
    if (s.dash && s.dash.length) g.d(s.dash, 0);
    if (s.kind === 'rect') {
      const y = up - s.y - s.height;
      if (s.fill || s.line > 0) {
        if (s.radius) curve(s.x, y, s.width, s.height, s.radius); else g.re(s.x, y, s.width, s.height);
        if (s.fill && s.line > 0) g.B(); else if (s.fill) g.f(); else g.S();
      }
    } else if (s.kind === 'line') g.m(s.from[0], up - s.from[1]).l(s.to[0], up - s.to[1]).S();
    else if (s.kind === 'poly') { s.points.forEach(([x, y], i) => (i ? g.l(x, up - y) : g.m(x, up - y))); g.h(); g.f(); }
    else if (s.kind === 'disc') { const r = s.radius; curve(s.at[0] - r, up - s.at[1] - r, 2 * r, 2 * r, r); g.f(); }
    else if (s.kind === 'text') {
      const font = fonts[s.family][s.bold ? 1 : 0]; const wide = font.calculateTextDimensions(s.text, s.size).width;
      const back = { start: 0, middle: wide / 2, end: wide }[s.anchor]; const t = (-(s.turn + (s.lean || 0)) * Math.PI) / 180; const [c, i] = [Math.cos(t), Math.sin(t)];
      g.BT().Tf(font, s.size).Tm(c, i, -i, c, s.at[0] - back * c, up - s.at[1] - back * i).Tj(s.text).ET();
    } else {
      const [w, h] = s.turn % 180 === 0 ? [s.width, s.height] : [s.height, s.width];
      const t = (-s.turn * Math.PI) / 180; const [c, i] = [Math.round(Math.cos(t)), Math.round(Math.sin(t))];
      g.cm(c, i, -i, c, s.x + s.width / 2, up - s.y - s.height / 2);
      g.drawImage(-w / 2, -h / 2, s.file, { transformation: { width: w, height: h, proportional: false } });
    }
    g.Q();
  }
  out.writePage(p);
}
out.end();
`;

/** @react-pdf/renderer: one drawing over each page, words as it sets them; its own Helvetica, Times and Courier, so Latin 1 words only. */
export const REACT_PDF = String.raw`${READ}
(async () => {
  const React = require('react'); const R = await import(process.env.NODE_PATH.split(':')[0] + '/@react-pdf/renderer/lib/react-pdf.js');
  const e = React.createElement;
  const FACES = { sans: ['Helvetica', 'Helvetica-Bold'], serif: ['Times-Roman', 'Times-Bold'], mono: ['Courier', 'Courier-Bold'] };
  const ANCHOR = { start: 'start', middle: 'middle', end: 'end' };
  const shape = (s, key) => {
    const pen = { key, fill: s.fill || 'none', ...(s.line > 0 ? { stroke: s.stroke, strokeWidth: s.line } : {}), ...(s.dash && s.dash.length ? { strokeDasharray: s.dash.join(',') } : {}) };
    if (s.kind === 'rect') return s.fill || s.line > 0 ? e(R.Rect, { ...pen, x: s.x, y: s.y, width: s.width, height: s.height, ...(s.radius ? { rx: s.radius, ry: s.radius } : {}) }) : null;
    if (s.kind === 'line') return e(R.Line, { ...pen, x1: s.from[0], y1: s.from[1], x2: s.to[0], y2: s.to[1] });
    if (s.kind === 'poly') return e(R.Polygon, { ...pen, points: s.points.map((p) => p.join(',')).join(' ') });
    if (s.kind === 'disc') return e(R.Circle, { ...pen, cx: s.at[0], cy: s.at[1], r: s.radius });
    if (s.kind !== 'text') throw new Error('pictures apart');
    const turn = s.turn + (s.lean || 0);
    return e(R.Text, { key, x: s.at[0], y: s.at[1], fill: s.fill, textAnchor: ANCHOR[s.anchor], style: { fontFamily: FACES[s.family][s.bold ? 1 : 0], fontSize: s.size }, ...(turn ? { transform: 'rotate(' + turn + ' ' + s.at[0] + ' ' + s.at[1] + ')' } : {}) }, s.text);
  };
  const leaf = (page, key) => {
    const images = page.shapes.filter((s) => s.kind === 'picture').map((s, i) => {
      if (s.turn) throw new Error('A turned picture');
      return e(R.Image, { key: 'i' + i, src: s.file, style: { position: 'absolute', left: s.x, top: s.y, width: s.width, height: s.height } });
    });
    const drawn = page.shapes.filter((s) => s.kind !== 'picture').map(shape);
    const svg = e(R.Svg, { key: 's', width: page.width, height: page.height, viewBox: '0 0 ' + page.width + ' ' + page.height, style: { position: 'absolute', left: 0, top: 0 } }, drawn);
    return e(R.Page, { key, size: { width: page.width, height: page.height } }, [...images, svg]);
  };
  await R.renderToFile(e(R.Document, { creationDate: new Date('2020-01-01T00:00:00Z'), modificationDate: new Date('2020-01-01T00:00:00Z') }, pages.map(leaf)), to);
})().catch((error) => { console.error(error); process.exit(1); });
`;
