import { zintModules } from './modules.js';

/** The big codes of the samples' framed labels have modules of 3 dots of the 203 dpi grid: 0.375 mm, 14.8 mil. */
export const DESIGNED_DOTS = 3;

/** The modules of a (420)(92) code, from the bytes that a reader transmits, as zint writes them. */
export function zintOf(bytes: string): string {
  const [, postcode = '', rest = ''] = /^420(.{5})\x1d(.*)$/.exec(Buffer.from(bytes, 'hex').toString('latin1')) ?? [];
  const [modules = ''] = zintModules([
    '-b',
    '16',
    '--gs1parens',
    '--gs1nocheck',
    '-d',
    `(420)${postcode}(${rest.slice(0, 2)})${rest.slice(2)}`,
  ]);
  return modules;
}
