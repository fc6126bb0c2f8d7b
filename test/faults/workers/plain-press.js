// A worker without engines: the document itself says, as JSON behind a PDF's first line, what comes of it. For tests of
// everything that stands around the work on a document. `{"items": [{"role": "label", "parcel": 1}], "delay": 20}`; `pressed`
// gives the pressed pages, base64.
import { readFileSync } from 'node:fs';
import { parentPort } from 'node:worker_threads';

parentPort.on('message', async ({ item }) => {
  const told = JSON.parse(readFileSync(item.path, 'utf8').split('\n')[1]);
  if (told.delay) await new Promise((resolve) => setTimeout(resolve, told.delay));
  let pressedPage = 0;
  const items = told.items.map((each, index) => {
    const state = each.state ?? 'ready';
    const reason = { code: 'verify/code-lost', message: 'A code can not be read back.', remedy: 'Download it again.' };
    return {
      id: `p${index + 1}`,
      page: index + 1,
      role: each.role ?? 'label',
      state: state === 'ready' ? { kind: state } : { kind: state, ...reason },
      box: { x: 0, y: 0, width: 288, height: 432 },
      turn: 0,
      scale: 1,
      parcel: each.parcel,
      evidence: [],
      codes: [],
      pressedPage: state === 'ready' ? (pressedPage += 1) : undefined,
      drawnBox: { x: 0, y: 0, width: 288, height: 400 },
      numberBox: { x: 240, y: 410, width: 40, height: 14 },
    };
  });
  const pictures = items.filter(({ state }) => state.kind === 'held').map(({ id }) => ({ itemId: id, png: Buffer.from(`png of ${id}`) }));
  const result = {
    pageCount: items.length,
    items,
    diagnostics: [],
    pressed: await pressed(told, item.sha256, pressedPage),
    pictures,
    texts: items.map(({ id }, index) => ({ itemId: id, codes: [], lines: told.items[index].lines ?? [] })),
    times: { press: 1 },
    counts: { documentsOpened: 1, sourceRasters: 0, outputRasters: pressedPage, decodes: pressedPage },
  };
  parentPort.postMessage({ type: 'done', result, spoiled: false });
});

async function pressed(told, seed, count) {
  if (count === 0) return undefined;
  return told.pressed === undefined ? pages(seed, count, told.padding ?? 0) : Buffer.from(told.pressed, 'base64');
}

/** Pages of 4×6 in that each draw something of their own; `padding` bytes more that don't pack. */
async function pages(seed, count, padding) {
  const { PDFDocument } = await import('pdf-lib');
  const document = await PDFDocument.create({ updateMetadata: false });
  for (let n = 0; n < count; n += 1) {
    const page = document.addPage([288, 432]);
    page.drawRectangle({ x: 20, y: 40 + (parseInt(seed.slice(0, 2), 16) % 100), width: 200, height: 20 + n });
    if (padding > 0)
      page.node.addContentStream(document.context.register(document.context.stream(`% ${seed.repeat(Math.ceil(padding / 64))}`)));
  }
  return document.save({ useObjectStreams: false });
}
