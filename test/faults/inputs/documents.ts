/** The smallest PDF that has a page: white, 4×6 in, with a comment that makes each one different. */
export function smallPdf(comment: string): Buffer {
  const objects = [
    '<< /Type /Catalog /Pages 2 0 R >>',
    '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
    '<< /Type /Page /Parent 2 0 R /MediaBox [0 0 288 432] >>',
  ];
  let text = `%PDF-1.4\n% ${comment}\n`;
  const offsets = objects.map((object, i) => {
    const at = text.length;
    text += `${i + 1} 0 obj\n${object}\nendobj\n`;
    return at;
  });
  const start = text.length;
  text += `xref\n0 4\n0000000000 65535 f \n${offsets.map((at) => `${String(at).padStart(10, '0')} 00000 n \n`).join('')}`;
  text += `trailer\n<< /Size 4 /Root 1 0 R >>\nstartxref\n${start}\n%%EOF\n`;
  return Buffer.from(text, 'latin1');
}

const OLE2 = Buffer.from('d0cf11e0a1b11ae1', 'hex');

/** Documents that are no labels, by what they are; each with the code of its refusal. */
export const NO_LABELS: readonly (readonly [what: string, code: string, content: Buffer])[] = [
  ['nothing', 'intake/empty', Buffer.alloc(0)],
  ['one byte', 'intake/unknown-kind', Buffer.from([0x89])],
  ['zero bytes only', 'intake/unknown-kind', Buffer.alloc(5000)],
  ['a web page', 'intake/html', Buffer.from('<!DOCTYPE html>\n<html><body>Please sign in</body></html>')],
  ['a web page after a byte order mark and a comment', 'intake/html', Buffer.from('\ufeff<!-- saved -->\n<HTML lang="en"><p>hello')],
  ['a web page that quotes a PDF header', 'intake/html', Buffer.from('<html><pre>%PDF-1.4</pre></html>')],
  ['XHTML', 'intake/html', Buffer.from('<?xml version="1.0"?>\n<!DOCTYPE html>\n<html xmlns="http://www.w3.org/1999/xhtml"/>')],
  ['a table with commas', 'intake/spreadsheet', Buffer.from('order,name,qty\n1001,"Mug, blue",2\n1002,Bowl,1\n')],
  ['a table with semicolons in UTF-16', 'intake/spreadsheet', Buffer.from('\ufefforder;qty\r\n1;2\r\n', 'utf16le')],
  ['a table with tabs in an old code page', 'intake/spreadsheet', Buffer.from('Stra\xdfe\tOrt\nWeg 1\tK\xf6ln\n', 'latin1')],
  ['an old office document', 'intake/office-document', Buffer.concat([OLE2, Buffer.alloc(600)])],
  ['rich text', 'intake/office-document', Buffer.from('{\\rtf1\\ansi hello}')],
  ['label-printer commands with carets', 'intake/printer-language', Buffer.from('^XA^FO50,50^FDSAMPLE^FS^XZ')],
  ['the same after set-up commands', 'intake/printer-language', Buffer.from('\r\nCT~~CD,~CC^~CT~\n^XA\n^PW812\n^XZ')],
  ['label-printer commands by letter', 'intake/printer-language', Buffer.from('\nN\nq812\nA50,0,0,1,1,1,N,"SAMPLE"\nP1\n')],
  ['label-printer commands with a form size', 'intake/printer-language', Buffer.from('SIZE 4,6\r\nCLS\r\nTEXT 1,1,"0",0,1,1,"SAMPLE"\r\n')],
  ['label-printer commands with a form head', 'intake/printer-language', Buffer.from('! 0 200 200 1218 1\r\nTEXT 4 0 30 40 SAMPLE\r\n')],
  ['a page-printer job', 'intake/printer-language', Buffer.from('\x1b%-12345X@PJL\r\n')],
  ['a page-printer reset', 'intake/printer-language', Buffer.from('\x1bE\x1b&l0O')],
  ['a page description', 'intake/printer-language', Buffer.from('%!PS-Adobe-3.0\nshowpage\n')],
  [
    'a bitmap',
    'intake/picture-kind',
    // Size of the file, four bytes of nothing, and where the pixels begin.
    Buffer.concat([Buffer.from('BM'), Buffer.from('3a000000', 'hex'), Buffer.alloc(4), Buffer.from('36000000', 'hex'), Buffer.alloc(44)]),
  ],
  ['a phone photo', 'intake/picture-kind', Buffer.from('\0\0\0\x18ftypheic\0\0\0\0')],
  ['a vector drawing', 'intake/picture-kind', Buffer.from('<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg"/>')],
  ['a packed file', 'intake/archive-kind', Buffer.from('1f8b0800000000000003', 'hex')],
  ['prose', 'intake/text', Buffer.from('Dear shop,\nplease find the label attached.\n')],
  ['JSON', 'intake/text', Buffer.from('{"error": "not found"}')],
];
