/**
 * Every code that a message can carry: the room or step it comes from, a slash, and what is wrong. A closed set, sorted:
 * a message with a code that is not here does not compile.
 */
export const DIAGNOSTIC_CODES = [
  'batch/account',
  'batch/changed',
  'batch/crashed',
  'batch/internal-error',
  'batch/no-label',
  'batch/no-progress',
  'batch/out-of-memory',
  'batch/parcel-held',
  'batch/stopped',
  'config/bad-value',
  'crop/nothing-left',
  'locate-label/doubtful',
  'locate-label/not-found',
  'locate-label/outside-page',
  'locate-label/remainder',
  'packing-slip/empty-region',
  'packing-slip/no-label',
  'packing-slip/parcel',
  'packing-slip/unreadable',
  'reading/damaged',
  'reading/huge-page',
  'reading/needs-password',
  'reading/no-pages',
  'rotate/doubtful',
  'scale/too-large',
  'split-pages/no-code',
  'split-pages/skipped',
] as const;

export type DiagnosticCode = (typeof DIAGNOSTIC_CODES)[number];
