import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { faceOf, type Face, type Weight } from './face.js';
import { fontFile } from './font-file.js';
import type { Han } from './han.js';

/** A typeface in both weights, opened when first asked. */
interface Family {
  /** A face that has the character; undefined where none has. */
  faceOf(codePoint: number, weight: Weight): Face | undefined;
}

const require = createRequire(import.meta.url);

/** A typeface of one file a weight. */
function wholeFamily(name: string, files: Readonly<Record<Weight, () => string>>): Family {
  const open = new Map<Weight, Face>();
  return {
    faceOf: (codePoint, weight) => {
      let face = open.get(weight);
      if (!face) {
        face = faceOf(fontFile(`${name} ${weight}`, files[weight]()));
        open.set(weight, face);
      }
      return face.has(codePoint) ? face : undefined;
    },
  };
}

/** Stops on the weight axis of the variable faces (OpenType `wght`). */
const AXIS: Readonly<Record<Weight, number>> = { regular: 400, bold: 700 };

interface Slice {
  readonly name: string;
  /** First and last code point of each range. */
  readonly ranges: readonly (readonly [number, number])[];
}

/** A typeface of a hundred files, each with some characters: a slip opens the few that it needs, where the whole would be 10 MB. */
function slicedFamily(name: Han, index: () => string): Family {
  let read: { readonly slices: readonly Slice[]; readonly folder: string } | undefined;
  const named = new Map<number, readonly Slice[]>();
  const slicesOf = (codePoint: number): readonly Slice[] => {
    if (!read) {
      const path = index();
      read = { slices: readSlices(path), folder: join(dirname(path), 'files') };
    }
    const known = named.get(codePoint);
    if (known) return known;
    const slices = read.slices.filter(({ ranges }) => ranges.some(([first, last]) => codePoint >= first && codePoint <= last));
    named.set(codePoint, slices);
    return slices;
  };
  const open = new Map<string, Face>();
  return {
    faceOf: (codePoint, weight) => {
      for (const slice of slicesOf(codePoint)) {
        const key = `${name} ${slice.name} ${weight}`;
        let face = open.get(key);
        if (!face) {
          face = faceOf(fontFile(key, join(read?.folder ?? '', `noto-sans-${name}-${slice.name}-wght-normal.woff2`), AXIS[weight]));
          open.set(key, face);
        }
        // The index names more than the files hold.
        if (face.has(codePoint)) return face;
      }
      return undefined;
    },
  };
}

/** Reads `{ "[7]": "U+4e00-4e10,U+4e1f" }`. */
function readSlices(path: string): readonly Slice[] {
  const index = JSON.parse(readFileSync(path, 'utf8')) as Record<string, string>;
  return Object.entries(index).map(([name, ranges]) => ({
    name: name.replace(/^\[(\d+)\]$/, '$1'),
    ranges: ranges.split(',').map((range) => {
      const [first = NaN, last = first] = range
        .replace('U+', '')
        .split('-')
        .map((hex) => parseInt(hex, 16));
      return [first, last] as const;
    }),
  }));
}

/** Latin, Greek, Cyrillic and Devanagari with all common punctuation, then one a script. */
const SCRIPTS: readonly { readonly family: Family; readonly characters?: RegExp }[] = [
  {
    family: wholeFamily('latin', {
      regular: () => require.resolve('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf'),
      bold: () => require.resolve('@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf'),
    }),
  },
  {
    characters: /[\p{Script_Extensions=Arabic}\p{Script=Arabic}]/u,
    family: wholeFamily('arabic', {
      regular: () => require.resolve('@expo-google-fonts/noto-sans-arabic/400Regular/NotoSansArabic_400Regular.ttf'),
      bold: () => require.resolve('@expo-google-fonts/noto-sans-arabic/700Bold/NotoSansArabic_700Bold.ttf'),
    }),
  },
  {
    characters: /\p{Script_Extensions=Hebrew}/u,
    family: wholeFamily('hebrew', {
      regular: () => require.resolve('@expo-google-fonts/noto-sans-hebrew/400Regular/NotoSansHebrew_400Regular.ttf'),
      bold: () => require.resolve('@expo-google-fonts/noto-sans-hebrew/700Bold/NotoSansHebrew_700Bold.ttf'),
    }),
  },
  {
    characters: /[\p{Script_Extensions=Thai}\u0e3f]/u,
    family: wholeFamily('thai', {
      regular: () => require.resolve('@expo-google-fonts/noto-sans-thai/400Regular/NotoSansThai_400Regular.ttf'),
      bold: () => require.resolve('@expo-google-fonts/noto-sans-thai/700Bold/NotoSansThai_700Bold.ttf'),
    }),
  },
];

const HAN: Readonly<Record<Han, Family>> = {
  jp: slicedFamily('jp', () => require.resolve('@fontsource-variable/noto-sans-jp/unicode.json')),
  kr: slicedFamily('kr', () => require.resolve('@fontsource-variable/noto-sans-kr/unicode.json')),
  sc: slicedFamily('sc', () => require.resolve('@fontsource-variable/noto-sans-sc/unicode.json')),
  tc: slicedFamily('tc', () => require.resolve('@fontsource-variable/noto-sans-tc/unicode.json')),
};

/** Beyond these (ideographs on plane 2 and 3 aside) the East Asian indexes name pictures that the files don't hold. */
const EAST_ASIAN = /[\u2000-\uffef\u{20000}-\u{3ffff}]/u;

const found = new Map<string, Face | undefined>();

/**
 * The face that sets a character: Latin first, then its script's own, then the East Asian typefaces in the order asked. Undefined where no face has it.
 * @param char one character (code point)
 */
export function faceFor(char: string, weight: Weight, han: readonly Han[]): Face | undefined {
  const key = `${weight} ${han.join(' ')} ${char}`;
  if (found.has(key)) return found.get(key);
  const face = searchFace(char, weight, han);
  found.set(key, face);
  return face;
}

function searchFace(char: string, weight: Weight, han: readonly Han[]): Face | undefined {
  const codePoint = char.codePointAt(0) ?? 0;
  for (const { family, characters } of SCRIPTS) {
    if (characters && !characters.test(char)) continue;
    const face = family.faceOf(codePoint, weight);
    if (face) return face;
  }
  if (!EAST_ASIAN.test(char)) return undefined;
  for (const name of han) {
    const face = HAN[name].faceOf(codePoint, weight);
    if (face) return face;
  }
  return undefined;
}
