import { existsSync } from 'node:fs';
import type { Family } from './shapes.js';

const ROOM = '/usr/share/fonts/truetype';
const USUAL: Readonly<Record<Family, string>> = {
  sans: 'liberation/LiberationSans',
  serif: 'liberation/LiberationSerif',
  mono: 'liberation/LiberationMono',
};

/** The file of a face, `fonts` naming it by folder and stem: `lato/Lato`. Throws where there is none. */
export function fontFile(fonts: Partial<Record<Family, string>>, family: Family, bold: boolean): string {
  const stem = `${ROOM}/${fonts[family] ?? USUAL[family]}`;
  const names = bold ? [`${stem}-Bold.ttf`] : [`${stem}-Regular.ttf`, `${stem}.ttf`];
  const found = names.find(existsSync);
  if (found === undefined) throw new Error(`No font ${stem}`);
  return found;
}
