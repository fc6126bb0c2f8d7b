import type { Media } from '../../geometry/media.js';
import { num } from '../operators.js';
import { addPage, newDocument, saveDocument } from '../output.js';
import { FONT, lineOperators } from '../type/draw-line.js';
import type { LaidSlip } from './lay-out.js';
import { PageFont } from '../type/page-font.js';

/** Some rasterisers paint every dot that a mark touches: an edge that rounding puts a hair outside its dot would cost a whole one. pt. */
const DRAWN_IN = 0.003;

/** A PDF of a laid-out slip: one page each, nothing but black type and rectangles. */
export async function drawSlip({ pages, scale }: LaidSlip, media: Media): Promise<Uint8Array> {
  const document = await newDocument();
  const { context } = document;
  const font = new PageFont();
  const height = media.height / scale;
  const drawn = pages.map(({ lines, marks }) => {
    const type = lines.map(({ line, x, baseline }) => lineOperators(line, x, baseline, height, font));
    const rects = marks.map(
      (mark) =>
        `${num(mark.x + DRAWN_IN)} ${num(height - mark.y - mark.height + DRAWN_IN)} ${num(mark.width - 2 * DRAWN_IN)} ${num(mark.height - 2 * DRAWN_IN)} re`,
    );
    return [
      ...(scale === 1 ? [] : [`${num(scale)} 0 0 ${num(scale)} 0 0 cm`]),
      '0 g',
      ...(rects.length > 0 ? [...rects, 'f'] : []),
      ...(type.length > 0 ? ['BT', ...type, 'ET'] : []),
    ].join('\n');
  });
  const ref = font.embed(context);
  for (const operators of drawn) addPage(document, media, operators, { Font: { [FONT]: ref } });
  return saveDocument(document);
}
