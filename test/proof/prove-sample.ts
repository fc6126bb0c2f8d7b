import { gridOf, type GridName } from '../../src/geometry/grid.js';
import { parseMedia, type Media } from '../../src/geometry/media.js';
import { addTurns, turnedSize } from '../../src/geometry/placement.js';
import { pixelForDotScale } from '../../src/press/place.js';
import { pressDocument, type Pressed } from '../../src/press/press-document.js';
import { proveDocument, type Proof } from '../../src/proof/prove.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { SourceDocument } from '../../src/reading/source.js';
import { pageSheet, type ProofPlan, type Sheet } from '../../src/sheet/sheet.js';
import { ontoWholeDots } from '../../src/steps/whole-dots.js';
import type { Sample } from '../samples/sample.js';

export const media4x6 = parseMedia('4x6in') as Media;

export async function openSource(bytes: Uint8Array): Promise<SourceDocument> {
  const source = await openPdf(bytes);
  if ('refused' in source) throw new Error(source.refused.message);
  return source;
}

/** For tests of other things: bars may come out as they happen to. */
export const ANY_BARS: ProofPlan = { codes: 'required', allow: ['decodability', 'quiet-zone'] };

/** The same sheets with their bars on whole dots, as `scale` brings them there, and every limit in force. */
export function onWholeDots(sheets: readonly Sheet[], source: SourceDocument, gridName: GridName): Promise<readonly Sheet[]> {
  const context = { media: media4x6, grid: gridOf(gridName), floor: 0.95, fixedSize: false };
  const judged = sheets.map((sheet): Sheet => ({ ...sheet, proof: { codes: 'required' } }));
  return Promise.all(judged.map((sheet) => ontoWholeDots(sheet, source.page(sheet.page), context)));
}

/** The sheets that a perfect recipe would make of a sample: its expected boxes and turns, at true size or down to fit. */
export function perfectSheets(sample: Sample, source: SourceDocument, gridName: GridName): readonly Sheet[] {
  return sample.expected.pages.flatMap((page, index) =>
    page.labels.map((label, position): Sheet => {
      const { box } = label;
      const upright = label.turn;
      const size = turnedSize(box.width, box.height, upright);
      // Designed lying: a quarter turn more to fit the media.
      const turn = size.width > size.height ? addTurns(upright, 90) : upright;
      const lies = turnedSize(box.width, box.height, turn);
      const overhang = Math.max(lies.width - media4x6.width, lies.height - media4x6.height);
      const fit = overhang <= 1.5 ? 1 : Math.min(media4x6.width / lies.width, media4x6.height / lies.height);
      const picture = source.page(index + 1).pictureUnder(box);
      const exact = picture && pixelForDotScale(picture.pixelsPerPt, gridOf(gridName), fit);
      return {
        ...pageSheet(index + 1, page.width, page.height),
        id: `p${index + 1}.${position + 1}`,
        role: label.role,
        box,
        turn,
        scale: exact ?? fit,
        proof: ANY_BARS,
      };
    }),
  );
}

export async function pressAndProve(
  source: SourceDocument,
  sheets: readonly Sheet[],
  gridName: GridName,
  options: Parameters<typeof proveDocument>[6] = {},
): Promise<{ pressed: Pressed; proofs: readonly Proof[] }> {
  const grid = gridOf(gridName);
  const pressed = await pressDocument(source, sheets, media4x6, grid);
  if (!pressed.bytes) throw new Error(`nothing was pressed: ${pressed.undrawn.map((each) => each.reason.message).join('; ')}`);
  return { pressed, proofs: await proveDocument(source, pressed.bytes, sheets, pressed.placements, media4x6, grid, options) };
}

export const verdictOf = (proof: Proof | undefined): string =>
  proof === undefined ? 'no proof' : proof.verdict === 'proved' ? 'proved' : proof.verdict.code;
