import { ROLE_WORDS, roleWord } from '../sheet/role-words.js';
import type { Role } from '../sheet/sheet.js';

/** `1 label`, `2 labels`. Regular plurals only, or the plural as given. */
export const count = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

/** `a`, `a and b`, `a, b and c`. */
export function list(parts: readonly string[]): string {
  const last = parts.at(-1) ?? '';
  return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} and ${last}`;
}

export { roleWord };
export const countRole = (n: number, role: Role): string => count(n, ...ROLE_WORDS[role]);

export type Style = 'bold' | 'red' | 'green' | 'yellow' | 'dim';
const SGR: Readonly<Record<Style, number>> = { bold: 1, dim: 2, red: 31, green: 32, yellow: 33 };

/** A painter of ANSI colours, or one that leaves text as it is. */
export function painter(colour: boolean): (style: Style, text: string) => string {
  return (style, text) => (colour ? `\u001b[${SGR[style]}m${text}\u001b[0m` : text);
}
