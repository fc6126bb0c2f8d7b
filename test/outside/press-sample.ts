import type { Box } from '../../src/geometry/box.js';
import { gridOf, type GridName } from '../../src/geometry/grid.js';
import { isMediaSize, parseMedia, type Media } from '../../src/geometry/media.js';
import { addTurns, applyToBox, turnedSize } from '../../src/geometry/placement.js';
import { pressDocument } from '../../src/press/press-document.js';
import { openImage } from '../../src/reading/open-image.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import type { PlacedCode, Sample } from '../samples/sample.js';

/** A label as pressed: its output page (from 1) and where each of its codes must lie there, pt, y down. */
export interface PressedLabel {
  readonly page: number;
  /** How large the sample draws it; 1 is true size. */
  readonly scale: number;
  readonly codes: readonly { readonly code: PlacedCode; readonly box: Box }[];
  readonly pixelForDot: boolean;
}

/** What one document became. Labels that are larger than 4×6 in are pressed on A6. */
export interface PressedSample {
  readonly pdf: Uint8Array;
  readonly media: Media;
  readonly labels: readonly PressedLabel[];
}

/**
 * Presses every label of a sample from its known box at true size, and a label designed lying along the page: what is drawn
 * is judged here, not what is found.
 */
export async function pressSample(sample: Sample, gridName: GridName = '203dpi'): Promise<PressedSample> {
  const source = await (sample.fileName.endsWith('.pdf') ? openPdf : openImage)(sample.bytes);
  if ('refused' in source) throw new Error(`${sample.name}: ${source.refused.message}`);
  try {
    const labels = sample.expected.pages.flatMap((page, i) => page.labels.map((label) => ({ ...label, number: i + 1 })));
    const small = labels.every(({ box }) => fitsAnyWay(box, '4x6in'));
    const media = mediaOf(small ? '4x6in' : 'a6');
    const sheets = labels.map((label, i): Sheet => {
      const page = source.page(label.number);
      const lies = turnedSize(label.box.width, label.box.height, label.turn);
      const turn = lies.width > lies.height ? addTurns(label.turn, 90) : label.turn;
      return { ...pageSheet(label.number, page.width, page.height), id: `l${i}`, role: label.role, box: label.box, turn };
    });
    const { bytes, placements, undrawn } = await pressDocument(source, sheets, media, gridOf(gridName));
    if (bytes === undefined || undrawn.length > 0) throw new Error(`${sample.name}: ${undrawn[0]?.reason.message ?? 'nothing drawn'}`);
    return {
      pdf: bytes,
      media,
      labels: placements.map(({ page, matrix, pixelForDot }, i) => ({
        page,
        pixelForDot,
        scale: labels[i]?.scale ?? 1,
        codes: (labels[i]?.codes ?? []).map((code) => {
          if (!matrix) throw new Error('a region has a matrix');
          return { code, box: applyToBox(matrix, code.box) };
        }),
      })),
    };
  } finally {
    source.close();
  }
}

function mediaOf(name: string): Media {
  const media = parseMedia(name);
  if (!media) throw new Error(`${name} is unknown`);
  return media;
}

function fitsAnyWay(box: Box, name: string): boolean {
  const media = mediaOf(name);
  const [short, long] = [Math.min(box.width, box.height), Math.max(box.width, box.height)];
  return isMediaSize(media, box.width, box.height) || (short <= media.width && long <= media.height);
}
