/**
 * Every code that a message can carry: the room or step it comes from, a slash, and what is wrong. A closed set, sorted:
 * a message with a code that is not here does not compile.
 */
export const DIAGNOSTIC_CODES = ['config/bad-value'] as const;

export type DiagnosticCode = (typeof DIAGNOSTIC_CODES)[number];
