import type { Box } from '../../src/geometry/box.js';
import { gridOf, type GridName } from '../../src/geometry/grid.js';
import { parseMedia } from '../../src/geometry/media.js';
import { applyToBox } from '../../src/geometry/placement.js';
import { pressDocument } from '../../src/press/press-document.js';
import { openImage } from '../../src/reading/open-image.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import { pageSheet, type Sheet } from '../../src/sheet/sheet.js';
import type { PlacedCode, Sample } from '../samples/sample.js';

/** A label as pressed: its output page (from 1) and where each of its codes must lie there, pt, y down. */
export interface PressedLabel {
  readonly page: number;
  readonly codes: readonly { readonly code: PlacedCode; readonly box: Box }[];
  readonly pixelForDot: boolean;
}

/** Presses every label of a sample from its known box at true size: what is drawn is judged here, not what is found. */
export async function pressSample(
  sample: Sample,
  gridName: GridName = '203dpi',
): Promise<{ pdf: Uint8Array; labels: readonly PressedLabel[] }> {
  const media = parseMedia('4x6in');
  if (!media) throw new Error('4x6in is unknown');
  const source = await (sample.fileName.endsWith('.pdf') ? openPdf : openImage)(sample.bytes);
  if ('refused' in source) throw new Error(`${sample.name}: ${source.refused.message}`);
  try {
    const labels = sample.expected.pages.flatMap((page, i) => page.labels.map((label) => ({ ...label, number: i + 1 })));
    const sheets = labels.map((label, i): Sheet => {
      const page = source.page(label.number);
      return { ...pageSheet(label.number, page.width, page.height), id: `l${i}`, role: label.role, box: label.box, turn: label.turn };
    });
    const { bytes, placements, undrawn } = await pressDocument(source, sheets, media, gridOf(gridName));
    if (bytes === undefined || undrawn.length > 0) throw new Error(`${sample.name}: ${undrawn[0]?.reason.message ?? 'nothing drawn'}`);
    return {
      pdf: bytes,
      labels: placements.map(({ page, matrix, pixelForDot }, i) => ({
        page,
        pixelForDot,
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
