import { codeLikeAreas } from '../reading/code-like.js';
import type { SourcePage } from '../reading/source.js';
import { held, pageSheet, skipped, type Sheet } from '../sheet/sheet.js';
import { option, type OptionValues } from './option.js';
import { pagesMatch } from './pages.js';
import { documentStep } from './step.js';

const OPTIONS = {
  labels: option({ kind: 'pages' }, 'Pages that are labels.', 'every'),
  slips: option({ kind: 'pages' }, 'Pages that are packing slips; they are taken out of the labels.', 'none'),
  returns: option({ kind: 'pages' }, 'Pages that are return labels: parcels of their own, never between a label and its slip.', 'none'),
  skip: option({ kind: 'pages' }, 'Pages that are neither; each is named in the account.', 'none'),
  'label-words': option({ kind: 'phrases' }, 'A page with one of these phrases is a label, whatever its position.', []),
  'slip-words': option({ kind: 'phrases' }, 'A page with one of these phrases is a packing slip, whatever its position.', []),
  'return-words': option({ kind: 'phrases' }, 'A page with one of these phrases is a return label, whatever its position.', []),
  'skip-words': option({ kind: 'phrases' }, 'A page with one of these phrases is skipped, whatever its position.', []),
  'without-code': option(
    { kind: 'choice', values: ['label', 'skip', 'hold'] },
    'What becomes of a label page on which nothing looks like a barcode: still a label, skipped, or held for a look.',
    'label',
  ),
} as const;

/** Decides for each page of the document whether it is a label, a slip, or to be skipped: by position, words, or what is on it. */
export const splitPages = documentStep({
  name: 'split-pages',
  summary: 'Take the document apart into pages: labels, packing slips, and pages to skip.',
  options: OPTIONS,
  short: 'labels',
  required: 'it says which pages are labels',
  notBefore: {},
  async apply(sheets, options, { document }) {
    return sheets.map((sheet) => (sheet.role === 'page' ? judge(sheet, options, document.page(sheet.page), document.pageCount) : sheet));
  },
});

function judge(sheet: Sheet, options: OptionValues<typeof OPTIONS>, page: SourcePage, pageCount: number): Sheet {
  const at = (pattern: string): boolean => pagesMatch(pattern, page.number, pageCount);
  const says = (phrases: readonly string[]): string | undefined => phrases.find((phrase) => pageText(page).includes(fold(phrase)));
  const fresh: Sheet = { ...pageSheet(page.number, page.width, page.height), ...sheet };

  const skipWord = says(options['skip-words']);
  if (skipWord !== undefined) return skip(fresh, `the page says "${skipWord}"`);
  const slipWord = says(options['slip-words']);
  if (slipWord !== undefined) return { ...fresh, role: 'slip', evidence: [`the page says "${slipWord}"`] };
  const returnWord = says(options['return-words']);
  if (returnWord !== undefined) return { ...fresh, role: 'return-label', evidence: [`the page says "${returnWord}"`] };
  const labelWord = says(options['label-words']);
  if (labelWord !== undefined) return { ...fresh, role: 'label', evidence: [`the page says "${labelWord}"`] };

  if (at(options.skip)) return skip(fresh, `page ${page.number} is to be skipped`);
  if (at(options.slips)) return { ...fresh, role: 'slip', evidence: [`page ${page.number} is a slip by its position`] };
  if (at(options.returns)) return { ...fresh, role: 'return-label', evidence: [`page ${page.number} is a return label by its position`] };
  if (!at(options.labels)) return skip(fresh, `page ${page.number} is not among the label pages`);
  if (options['without-code'] !== 'label' && codeLikeAreas(page).length === 0) return withoutCode(fresh, options['without-code']);
  return { ...fresh, role: 'label' };
}

function skip(sheet: Sheet, why: string): Sheet {
  return skipped(sheet, {
    code: 'split-pages/skipped',
    message: `skipped: ${why}`,
    remedy: 'Change the options of split-pages if this page is a label or a slip.',
  });
}

function withoutCode(sheet: Sheet, what: 'skip' | 'hold'): Sheet {
  const reason = {
    code: 'split-pages/no-code',
    message: 'no label: nothing on the page looks like a barcode',
    remedy: 'If it is a label without a code, say `without-code: label` under split-pages and `codes: none` under verify.',
  } as const;
  return what === 'skip' ? skipped(sheet, reason) : held(sheet, reason);
}

const fold = (text: string): string => text.toLocaleLowerCase('en').replaceAll(/\s+/g, ' ').trim();

function pageText(page: SourcePage): string {
  return fold(
    page
      .words()
      .map((word) => word.text)
      .join(' '),
  );
}
