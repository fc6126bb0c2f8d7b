import type { Grid } from '../geometry/grid.js';
import { reasonOf, SecondOpinions, type Drawings, type SecondOpinionMode } from '../proof/second-opinion.js';
import type { SourceDocument } from '../reading/source.js';
import type { ItemState } from '../recipe/outcome.js';
import { isLabel, type Sheet } from '../sheet/sheet.js';

/** Asks a second engine about labels that would be printed; where it differs they are held, and both drawings are given by the sheet's id. */
export async function secondOpinions(
  source: SourceDocument,
  bytes: Uint8Array,
  sheets: readonly Sheet[],
  states: Map<string, ItemState>,
  grid: Grid,
): Promise<ReadonlyMap<string, Drawings>> {
  const drawings = new Map<string, Drawings>();
  const modes = new Map<SecondOpinionMode, SecondOpinions>();
  try {
    for (const sheet of sheets) {
      const mode = sheet.proof?.secondOpinion ?? 'never';
      if (mode === 'never' || !isLabel(sheet) || states.get(sheet.id)?.kind !== 'ready') continue;
      const opinions = modes.get(mode) ?? new SecondOpinions(source, bytes, mode, grid);
      modes.set(mode, opinions);
      const opinion = await opinions.about(sheet.page, sheet.box);
      const reason = reasonOf(opinion);
      if (reason) states.set(sheet.id, { kind: 'held', ...reason });
      if (opinion.kind === 'differs') drawings.set(sheet.id, opinion.drawings);
    }
  } finally {
    for (const opinions of modes.values()) await opinions.close();
  }
  return drawings;
}
