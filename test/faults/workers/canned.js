import { parentPort } from 'node:worker_threads';

/** A finished document of one page with one skipped item: what a healthy worker might answer. */
export const cannedResult = () => ({
  pageCount: 1,
  items: [
    {
      id: 'p1',
      page: 1,
      role: 'page',
      state: { kind: 'skipped', code: 'batch/no-label', message: 'canned', remedy: 'none' },
      box: undefined,
      turn: 0,
      scale: 1,
      parcel: undefined,
      evidence: [],
      codes: [],
      pressedPage: undefined,
      drawnBox: undefined,
      numberBox: undefined,
    },
  ],
  diagnostics: [],
  pressed: undefined,
  pictures: [],
  times: {},
  counts: { documentsOpened: 1, sourceRasters: 0, outputRasters: 0, decodes: 0 },
});

export const beginPage = (page) => parentPort.postMessage({ type: 'page', page });
export const finish = () => parentPort.postMessage({ type: 'done', result: cannedResult(), spoiled: false });

/** Answers every document with the canned result, except the one named `bad`, which gets `story`. */
export function serve(story) {
  let served = 0;
  parentPort.on('message', (order) => {
    served += 1;
    if (order.item.shownName === 'bad') story(served);
    else finish();
  });
}
