/**
 * How the command ends, few and stable:
 * 0 all finished, or nothing to do; 1 ran, but something failed or is held; 2 wrong usage or configuration, nothing was
 * started; 3 could not go on (disk, lock, an account that does not add up); 130 and 143 interrupted by Ctrl-C and by a
 * request to end.
 */
export const EXIT = { done: 0, unfinished: 1, usage: 2, cannotGoOn: 3, interrupted: 130, terminated: 143 } as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** Where a command writes: results to `out`, talk to `err`; texts end with their own newline. `colour`: whether ANSI colour is wanted. */
export interface CommandIo {
  out(text: string): void;
  err(text: string): void;
  readonly colour: boolean;
}
