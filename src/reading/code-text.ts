import type { Code } from './source.js';

/** The bytes of a code as characters, one each. */
export const textOf = ({ bytes }: Pick<Code, 'bytes'>): string => Buffer.from(bytes, 'hex').toString('latin1');

/** Letters and figures alone, upper case: numbers are written with and without gaps. */
export const plainText = (text: string): string => text.toUpperCase().replaceAll(/[^\p{L}\p{N}]/gu, '');
