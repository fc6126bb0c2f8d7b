/** What reading did in this thread since the last `takeCounts`: counted, so that tests can hold the work per label to a number. */
const counts = { documentsOpened: 0, sourceRasters: 0, outputRasters: 0, decodes: 0, secondRasters: 0 };

export type Counted = keyof typeof counts;

export function count(what: Counted): void {
  counts[what] += 1;
}

/** The counts since the last call; starts again from zero. */
export function takeCounts(): Record<Counted, number> {
  const taken = { ...counts };
  for (const key of Object.keys(counts) as Counted[]) counts[key] = 0;
  return taken;
}
