import type { Reason } from '../sheet/sheet.js';

/** Why a name can't be given to `--picture`; undefined when it can. */
export function pictureProblem(name: string): Reason | undefined {
  if (/[^/\\]\.png$/i.test(name)) return undefined;
  return {
    code: 'commands/bad-usage',
    message: `--picture is “${name}”`,
    remedy: 'Write a file name that ends in .png, such as page.png.',
  };
}

/** `page.png`, and with a number (from 1) `page-1.png`. */
export const picturePath = (name: string, number: number | undefined): string =>
  number === undefined ? name : name.replace(/(\.png)$/i, `-${number}$1`);
