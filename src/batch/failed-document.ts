import type { DocumentResult } from '../recipe/outcome.js';
import type { Reason } from '../sheet/sheet.js';

/** The result of a document that could not be worked through: no pages, and one item that says why. */
export function failedDocument(reason: Reason): DocumentResult {
  return refusedDocument('failed', reason);
}

/** The same for a document that is not worked on at all. */
export function refusedDocument(state: 'failed' | 'skipped', reason: Reason): DocumentResult {
  return {
    pageCount: 0,
    items: [
      {
        id: 'document',
        page: 0,
        role: 'page',
        state: { kind: state, ...reason },
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
    counts: { documentsOpened: 0, sourceRasters: 0, outputRasters: 0, decodes: 0 },
  };
}
