import { ZIP_IN_ZIP } from '../intake/reasons.js';
import { sniff, SNIFF_BYTES } from '../intake/sniff.js';
import { openImage } from '../reading/open-image.js';
import { openPdf } from '../reading/open-pdf.js';
import type { SourceDocument } from '../reading/source.js';
import type { Reason } from '../sheet/sheet.js';

/** Opens a document by its content, never by its name; `refused` says in one line why not. */
export async function openSource(bytes: Uint8Array): Promise<SourceDocument | { readonly refused: Reason }> {
  const sniffed = sniff(bytes.subarray(0, SNIFF_BYTES));
  switch (sniffed.kind) {
    case 'pdf':
      return openPdf(bytes);
    case 'picture':
      return openImage(bytes);
    case 'zip':
      return { refused: ZIP_IN_ZIP };
    case 'refused':
      return { refused: sniffed.reason };
  }
}
