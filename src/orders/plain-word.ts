/** A word as it is compared: small letters without accents, everything but letters and digits one blank. `Côte d’Ivoire` is `cote d ivoire`. */
export const plainWord = (text: string): string =>
  text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLocaleLowerCase('en')
    .replaceAll('ß', 'ss')
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** A column's name as it is compared: case and blanks don't count. */
export const columnKey = (name: string): string => name.normalize('NFC').trim().replaceAll(/\s+/g, ' ').toLocaleLowerCase('en');

const LONGEST_SHOWN = 40;

/** A word of an order file in a message: between backticks, on one line, cut when long. Never for what is a buyer's. */
export function shown(text: string): string {
  const line = text.replaceAll(/\s+/g, ' ').replaceAll('`', "'").trim();
  const characters = Array.from(line);
  return `\`${characters.length > LONGEST_SHOWN ? `${characters.slice(0, LONGEST_SHOWN).join('')}…` : line}\``;
}
