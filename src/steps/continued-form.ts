import { s10CheckDigit } from '../proof/check-digits.js';
import type { SourcePage, Word } from '../reading/source.js';
import { held, type Reason, type Sheet } from '../sheet/sheet.js';

/** What the pages of one form have in common, as far as their words say it. */
interface Marks {
  /** Page and count of pages, from 1; undefined where it isn't said, or said twice and differently. */
  readonly page: { readonly number: number; readonly of: number } | undefined;
  /** International numbers (S10) whose check digit is right. */
  readonly numbers: ReadonlySet<string>;
}

/**
 * A page without a name behind a customs form: a page of that form when its number says so (page n of m after page n - 1 of m, or the same S10 number); else
 * held, for a declaration that lacks a page is none. Pages that said what they are, and blank ones, stay as they are.
 * @param before the last page of the form
 */
export function continued(sheet: Sheet, page: SourcePage, before: SourcePage): Sheet {
  if (sheet.role !== 'page' || sheet.state.kind === 'planned' || !UNNAMED.includes(sheet.state.code)) return sheet;
  const why = goesOn(marksOf(page), marksOf(before));
  const form: Sheet = { ...sheet, role: 'customs-form', state: { kind: 'planned' } };
  return why === undefined ? held(form, MAY_GO_ON) : { ...form, evidence: [...sheet.evidence, why] };
}

/** How split-pages calls a page that is no label and does not say what it is. */
const UNNAMED: readonly string[] = ['split-pages/no-code', 'split-pages/unknown'];

const MAY_GO_ON: Reason = {
  code: 'split-pages/continuation',
  message: 'the page lies behind a customs form and does not say what it is: it may be a part of the form',
  remedy: 'Look at the picture; if it is, print it and put it to its parcel. If not, name a phrase of it under skip-words of split-pages.',
};

function goesOn(page: Marks, before: Marks): string | undefined {
  const [here, there] = [page.page, before.page];
  const known = page.numbers.size > 0 && before.numbers.size > 0;
  const same = [...page.numbers].some((number) => before.numbers.has(number));
  if (known && !same) return undefined;
  if (here && there) {
    const isNext = here.of === there.of && here.number === there.number + 1;
    return isNext ? `page ${here.number} of ${here.of} of the customs form before it` : undefined;
  }
  return same ? 'it has the number of the customs form before it' : undefined;
}

function marksOf(page: SourcePage): Marks {
  const text = textOf(page.words());
  const said = [...text.matchAll(PAGE_OF)].map((match) => ({ number: Number(match[1] ?? match[3]), of: Number(match[2] ?? match[4]) }));
  const [first, ...others] = said.filter(({ number, of }) => number >= 1 && number <= of);
  const isOne = others.every(({ number, of }) => number === first?.number && of === first.of);
  const numbers = [...text.toUpperCase().matchAll(S10)].flatMap(([written]) => {
    const number = written.replace(/\s/g, '');
    return s10CheckDigit(number.slice(2, 10)) === Number(number[10]) ? [number] : [];
  });
  return { page: isOne ? first : undefined, numbers: new Set(numbers) };
}

const textOf = (words: readonly Word[]): string => words.map(({ text }) => text).join(' ');

/** `Page 2 of 3`, `Seite 2/3`, `第 2 页 / 共 3 页`: a fraction alone may be anything. From memory, for the languages that forms are seen in. */
const PAGE_OF =
  /(?:page|seite|blatt|página|pagina|pág\.?|pag\.?|feuille|foglio|hoja|folha|strona|str\.|strana|list|side|sida|sivu|oldal|lap|sayfa|лист|стр\.?|страница|σελίδα|ページ)\s*:?\s*(\d{1,2})\s*(?:of|von|sur|de|di|do|van|z|ze|av|af|iz|из|από|\/|-)\s*(\d{1,2})(?!\d)|第?\s*(\d{1,2})\s*[页頁]?\s*[/／,，]?\s*共\s*(\d{1,2})\s*[页頁]/giu;

/** UPU S10, perhaps in groups: `RR 123 456 785 XX`. */
const S10 = /(?<![A-Z0-9])[A-Z]{2} ?\d{3} ?\d{3} ?\d{2} ?\d ?[A-Z]{2}(?![A-Z0-9])/g;
