/** What run.json must say of the demo: kinds of items by state, and the reasons of all that is not printed. */
export interface Outcome {
  readonly ready: Readonly<Record<string, number>>;
  /** Code of the reason → how many, of held, failed and skipped items; what a label leaves of its page is not counted. */
  readonly reasons: Readonly<Record<string, number>>;
}

/** Forty orders: 38 labels and 2 return labels to print, eleven slips behind their labels; each planted fault found and no other. */
export const EXPECTED: Outcome = {
  ready: { label: 38, slip: 11, 'return-label': 2 },
  reasons: {
    'intake/duplicate': 1,
    'verify/too-fine': 1,
    'reading/cut-off': 1,
    'intake/empty': 1,
    'intake/html': 1,
    'packing-slip/no-label': 1,
    'split-pages/no-code': 1,
    'intake/unknown-kind': 1,
  },
};

interface Recorded {
  readonly documents: readonly {
    readonly items: readonly { readonly role: string; readonly state: string; readonly reason?: { readonly code: string } }[];
  }[];
}

/** The outcome that a run.json tells of. */
export function outcomeOf(record: unknown): Outcome {
  const items = (record as Recorded).documents.flatMap((document) => document.items);
  const ready: Record<string, number> = {};
  const reasons: Record<string, number> = {};
  for (const { role, state, reason } of items) {
    if (state === 'ready') ready[role] = (ready[role] ?? 0) + 1;
    else if (reason && role !== 'remainder') reasons[reason.code] = (reasons[reason.code] ?? 0) + 1;
  }
  return { ready, reasons };
}

/** What differs, a line each; none when all is as expected. */
export function differences(made: Outcome, expected: Outcome = EXPECTED): string[] {
  return (['ready', 'reasons'] as const).flatMap((part) =>
    [...new Set([...Object.keys(made[part]), ...Object.keys(expected[part])])].flatMap((key) => {
      const [is, should] = [made[part][key] ?? 0, expected[part][key] ?? 0];
      return is === should ? [] : [`${key}: ${is} instead of ${should}`];
    }),
  );
}
