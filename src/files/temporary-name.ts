const SUFFIX = '.slipyard-part';
let counter = 0;

/**
 * A file name that no other process and no other thread of this one uses: hidden, and short enough for any disk. It takes
 * nothing from the final name, which may be as long as the disk allows.
 */
export function temporaryName(): string {
  counter += 1;
  const random = Math.floor(Math.random() * 0x100000000).toString(36);
  return `.${process.pid}-${counter}-${random}${SUFFIX}`;
}

/** Whether a name in a folder is a temporary file of this or an earlier, interrupted run. */
export const isTemporaryName = (name: string): boolean => name.startsWith('.') && name.endsWith(SUFFIX);
