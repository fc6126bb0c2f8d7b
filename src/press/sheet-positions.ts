/** How pages take the positions of sheets. */
export interface PositionOrder {
  /** Positions on a sheet, from 1. */
  readonly perSheet: number;
  /** First free position of the first sheet, from 1. */
  readonly firstFree: number;
  /** Whether parcels are kept together, each beginning in an odd position. */
  readonly pairs: boolean;
}

/**
 * The position of each page, from 0, running on from sheet to sheet. Without pairs one after the other. With pairs a parcel begins in an odd
 * position (counted from 1), so that its second page lies beside its first, and on a new sheet where it would not fit whole; one with more pages
 * than a sheet has positions begins on a new sheet and runs on. What is left free so stays free.
 * @param parcels how many pages each parcel has, from 1, in the order of the stack
 */
export function sheetPositions(parcels: readonly number[], { perSheet, firstFree, pairs }: PositionOrder): readonly number[] {
  const taken: number[] = [];
  let next = firstFree - 1;
  for (const pages of parcels) {
    if (pairs) {
      const used = next % perSheet;
      const odd = used + (used % 2);
      next += odd + pages > perSheet && used > 0 ? perSheet - used : odd - used;
    }
    for (let page = 0; page < pages; page++) taken.push(next++);
  }
  return taken;
}
