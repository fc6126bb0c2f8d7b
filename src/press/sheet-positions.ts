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
 * than a sheet has positions begins on a new sheet and runs on. What is left free so stays free. A used sheet is never left unused all the same: a first
 * parcel that would not begin on it takes the first free position, and its other pages lie on the next sheet.
 * @param parcels how many pages each parcel has, from 1, in the order of the stack
 */
export function sheetPositions(parcels: readonly number[], { perSheet, firstFree, pairs }: PositionOrder): readonly number[] {
  const taken: number[] = [];
  let next = firstFree - 1;
  for (const [at, pages] of parcels.entries()) {
    if (pairs) {
      const paired = pairedFrom(next, pages, perSheet);
      if (at > 0 || paired < perSheet) next = paired;
    }
    for (let page = 0; page < pages; page++) taken.push(next++);
  }
  return taken;
}

/** Where a parcel of so many pages begins when it is to lie in pairs, from the next free position on; both from 0. */
function pairedFrom(next: number, pages: number, perSheet: number): number {
  const used = next % perSheet;
  const odd = used + (used % 2);
  return next + (odd + pages > perSheet && used > 0 ? perSheet - used : odd - used);
}
