import type { ItemResult, ItemState } from '../../src/recipe/outcome.js';

export const reason = { code: 'batch/no-label', message: 'a message', remedy: 'a remedy' } as const;
export const READY: ItemState = { kind: 'ready' };
export const HELD: ItemState = { kind: 'held', ...reason };
export const SKIPPED: ItemState = { kind: 'skipped', ...reason };
export const FAILED: ItemState = { kind: 'failed', ...reason };

/** An item as a worker gives it; ready label on page 1 unless told otherwise. */
export function item(id: string, changes: Partial<ItemResult> = {}): ItemResult {
  return {
    id,
    page: 1,
    role: 'label',
    state: READY,
    box: { x: 0, y: 0, width: 288, height: 432 },
    turn: 0,
    scale: 1,
    parcel: undefined,
    evidence: [],
    codes: [],
    pressedPage: 1,
    drawnBox: { x: 0, y: 0, width: 288, height: 400 },
    numberBox: { x: 250, y: 405, width: 30, height: 12 },
    ...changes,
  };
}
