import { openSource } from '../../src/batch/open-source.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import { locateLabel } from '../../src/steps/locate-label.js';
import { rotate } from '../../src/steps/rotate.js';
import { splitPages } from '../../src/steps/split-pages.js';
import { onMedia, optionsOf } from '../steps/on-sample.js';

/** What `any-page` makes of the first page of a document, up to which way up it is. Throws for a document that can't be opened. */
export async function foundOn(bytes: Uint8Array): Promise<readonly Sheet[]> {
  const document = await openSource(bytes);
  if ('refused' in document) throw new Error(document.refused.message);
  const context = onMedia(document);
  const { width, height } = document.page(1);
  const split = await splitPages.apply([pageSheet(1, width, height)], optionsOf(splitPages, { by: 'content' }), context);
  const located = await locateLabel.apply(split, optionsOf(locateLabel, { by: ['auto'] }), context);
  const sheets = await rotate.apply(located, optionsOf(rotate), context);
  document.close();
  return sheets;
}

/** Left, top, right and bottom of a sheet's or a label's box, pt. */
export const corners = ({ box: { x, y, width, height } }: Pick<Sheet, 'box'>): readonly number[] => [x, y, x + width, y + height];
