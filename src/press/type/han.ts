/** Regional forms of the same Han characters, each its own typeface. */
export type Han = 'jp' | 'kr' | 'sc' | 'tc';

/** With nothing to go by. */
export const ANY_HAN: readonly Han[] = ['sc', 'tc', 'jp', 'kr'];

/**
 * In which regional forms a text's Han characters are set, best first. Kana tell Japanese and Hangul tells Korean; otherwise the region whose national character
 * set has most of its characters, and where that is even, the one that `otherwise` puts first.
 */
export function hanOrder(text: string, otherwise: readonly Han[]): readonly Han[] {
  if (!/[\u3040-\ud7ff\uf900-\ufaff\u{20000}-\u{3ffff}]/u.test(text)) return otherwise;
  if (/[\p{Script=Hiragana}\p{Script=Katakana}]/u.test(text)) return first('jp', otherwise);
  if (/\p{Script=Hangul}/u.test(text)) return first('kr', otherwise);
  const ideographs = text.match(/\p{Script=Han}/gu) ?? [];
  const counts = otherwise.map((name) => ({ name, count: ideographs.filter((char) => nationalSet(name).has(char)).length }));
  return counts.sort((a, b) => b.count - a.count).map(({ name }) => name);
}

const first = (name: Han, order: readonly Han[]): readonly Han[] => [name, ...order.filter((each) => each !== name)];

/**
 * National character sets as two-byte codes: GB 2312 (rows A1 to F7), Big5 without its extensions, JIS X 0208 as Shift JIS, KS X 1001 (rows A1 to FE of EUC-KR).
 * Ranges from memory; the tables are those of the WHATWG Encoding standard, which Node has.
 */
const SETS: Readonly<
  Record<Han, { readonly encoding: string; readonly lead: readonly [number, number]; readonly trail: readonly [number, number] }>
> = {
  sc: { encoding: 'gb2312', lead: [0xb0, 0xf7], trail: [0xa1, 0xfe] },
  tc: { encoding: 'big5', lead: [0xa4, 0xf9], trail: [0x40, 0xfe] },
  jp: { encoding: 'shift_jis', lead: [0x88, 0xea], trail: [0x40, 0xfc] },
  kr: { encoding: 'euc-kr', lead: [0xca, 0xfd], trail: [0xa1, 0xfe] },
};

const sets = new Map<Han, ReadonlySet<string>>();

function nationalSet(name: Han): ReadonlySet<string> {
  const known = sets.get(name);
  if (known) return known;
  const { encoding, lead, trail } = SETS[name];
  const bytes: number[] = [];
  for (let high = lead[0]; high <= lead[1]; high++) {
    for (let low = trail[0]; low <= trail[1]; low++) bytes.push(high, low);
  }
  const made = new Set(new TextDecoder(encoding).decode(new Uint8Array(bytes)).match(/\p{Script=Han}/gu) ?? []);
  sets.set(name, made);
  return made;
}
