/** Programs for Node: pages as JSON on its input with `fonts` (files by family and weight), the PDF's path as its argument. NODE_PATH names their folder. */
const READ = String.raw`
const { pages, faces } = JSON.parse(require('fs').readFileSync(0, 'utf8')); const to = process.argv[1];
`;

/** pdfkit with its own Helvetica, Times and Courier, so Latin 1 words only. */
export const PDFKIT = String.raw`${READ}
const PDFDocument = require('pdfkit'); const fs = require('fs');
const FACES = { sans: ['Helvetica', 'Helvetica-Bold'], serif: ['Times-Roman', 'Times-Bold'], mono: ['Courier', 'Courier-Bold'] };
const doc = new PDFDocument({ autoFirstPage: false, margin: 0, info: { CreationDate: new Date('2020-01-01T00:00:00Z') } });
const end = fs.createWriteStream(to); doc.pipe(end);
for (const page of pages) {
  doc.addPage({ size: [page.width, page.height], margin: 0 });
  for (const s of page.shapes) {
    doc.save();
    if (s.dash && s.dash.length) doc.dash(s.dash[0], { space: s.dash[1] });
    if (s.line) doc.lineWidth(s.line);
    if (s.kind === 'rect') {
      if (s.radius) doc.roundedRect(s.x, s.y, s.width, s.height, s.radius); else doc.rect(s.x, s.y, s.width, s.height);
      if (s.fill && s.line > 0) doc.fillAndStroke(s.fill, s.stroke); else if (s.fill) doc.fill(s.fill); else if (s.line > 0) doc.stroke(s.stroke);
    } else if (s.kind === 'line') doc.moveTo(...s.from).lineTo(...s.to).stroke(s.stroke);
    else if (s.kind === 'poly') doc.polygon(...s.points).fill(s.fill);
    else if (s.kind === 'disc') doc.circle(s.at[0], s.at[1], s.radius).fill(s.fill);
    else if (s.kind === 'text') {
      doc.font(faces ? faces[s.family][s.bold ? 1 : 0] : FACES[s.family][s.bold ? 1 : 0]).fontSize(s.size).fillColor(s.fill);
      const wide = doc.widthOfString(s.text); const back = { start: 0, middle: wide / 2, end: wide }[s.anchor];
      doc.translate(s.at[0], s.at[1]).rotate(s.turn + (s.lean || 0)).text(s.text, -back, 0, { lineBreak: false, baseline: 'alphabetic' });
    } else {
      const [w, h] = s.turn % 180 === 0 ? [s.width, s.height] : [s.height, s.width];
      doc.translate(s.x + s.width / 2, s.y + s.height / 2).rotate(s.turn).image(s.file, -w / 2, -h / 2, { width: w, height: h });
    }
    doc.restore();
  }
}
doc.end();
`;

/** jsPDF with embedded faces. It places pictures that are turned otherwise than it says: they are to be turned in their pixels. */
export const JSPDF = String.raw`${READ}
const { jsPDF } = require('jspdf'); const fs = require('fs');
let doc;
const rgb = (hex) => [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16));
for (const page of pages) {
  const size = [page.width, page.height]; const way = page.width > page.height ? 'l' : 'p';
  if (doc) doc.addPage(size, way);
  else {
    doc = new jsPDF({ unit: 'pt', format: size, orientation: way, compress: true });
    doc.setCreationDate(new Date('2020-01-01T00:00:00Z'));
    for (const [family, files] of Object.entries(faces)) files.forEach((file, k) => {
      const name = family + k + '.ttf'; doc.addFileToVFS(name, fs.readFileSync(file).toString('base64')); doc.addFont(name, family, k ? 'bold' : 'normal');
    });
  }
  for (const s of page.shapes) {
    if (s.fill) doc.setFillColor(...rgb(s.fill));
    if (s.stroke) doc.setDrawColor(...rgb(s.stroke));
    if (s.line) doc.setLineWidth(s.line);
    doc.setLineDashPattern(s.dash && s.dash.length ? s.dash : [], 0);
    if (s.kind === 'rect') {
      const style = (s.fill ? 'F' : '') + (s.line > 0 ? 'D' : '');
      if (style === '') continue;
      if (s.radius) doc.roundedRect(s.x, s.y, s.width, s.height, s.radius, s.radius, style); else doc.rect(s.x, s.y, s.width, s.height, style);
    } else if (s.kind === 'line') doc.line(...s.from, ...s.to);
    else if (s.kind === 'poly') doc.lines(s.points.slice(1).map((p, i) => [p[0] - s.points[i][0], p[1] - s.points[i][1]]), ...s.points[0], [1, 1], 'F', true);
    else if (s.kind === 'disc') doc.circle(s.at[0], s.at[1], s.radius, 'F');
    else if (s.kind === 'text') {
      doc.setFont(s.family, s.bold ? 'bold' : 'normal'); doc.setFontSize(s.size); doc.setTextColor(...rgb(s.fill));
      const wide = doc.getTextWidth(s.text); const back = { start: 0, middle: wide / 2, end: wide }[s.anchor]; const angle = s.turn + (s.lean || 0); const t = (angle * Math.PI) / 180;
      doc.text(s.text, s.at[0] - back * Math.cos(t), s.at[1] - back * Math.sin(t), angle ? { angle: -angle } : undefined);
    } else {
      if (s.turn !== 0) throw new Error('A turned picture');
      const jpeg = s.file.endsWith('jpg');
      doc.addImage('data:image/' + (jpeg ? 'jpeg' : 'png') + ';base64,' + fs.readFileSync(s.file).toString('base64'), jpeg ? 'JPEG' : 'PNG', s.x, s.y, s.width, s.height, undefined, 'SLOW');
    }
  }
}
fs.writeFileSync(to, Buffer.from(doc.output('arraybuffer')));
`;
