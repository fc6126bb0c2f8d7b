import { afterEach, describe, expect, it, vi } from 'vitest';
import { openPdf } from '../../src/reading/open-pdf.js';
import { pdfium } from '../../src/reading/pdfium.js';

/** A PDF of these objects, by number; 1 is its catalog. */
function pdfOf(objects: Readonly<Record<number, string>>): Buffer {
  let text = '%PDF-1.7\n';
  const size = Math.max(...Object.keys(objects).map(Number)) + 1;
  const entries = Array.from({ length: size }, () => '0000000000 65535 f \n');
  for (const [number, object] of Object.entries(objects)) {
    entries[Number(number)] = `${String(text.length).padStart(10, '0')} 00000 n \n`;
    text += `${number} 0 obj\n${object}\nendobj\n`;
  }
  return Buffer.from(
    `${text}xref\n0 ${size}\n${entries.join('')}trailer\n<< /Size ${size} /Root 1 0 R >>\nstartxref\n${text.length}\n%%EOF\n`,
    'latin1',
  );
}

const CONTENT = '0 0 0 rg 10 10 100 100 re f';
const page = (entries: string): string => `<< /Type /Page /MediaBox [0 0 288 432] /Contents 4 0 R ${entries} >>`;
const GOOD = {
  1: '<< /Type /Catalog /Pages 2 0 R >>',
  2: '<< /Type /Pages /Kids [3 0 R] /Count 1 >>',
  3: page('/Parent 2 0 R /Resources << >>'),
  4: `<< /Length ${CONTENT.length} >>\nstream\n${CONTENT}\nendstream`,
};

async function openedAs(objects: Readonly<Record<number, string>>): Promise<string> {
  const document = await openPdf(pdfOf(objects));
  if ('refused' in document) return document.refused.code;
  const { unfit } = document.page(document.pageCount);
  document.close();
  return unfit?.code ?? 'fit';
}

it('an encryption that nobody here knows is no question of a password', async () => {
  const encrypted = pdfOf({ ...GOOD, 5: '<< /Filter /Unheard /V 1 /R 2 /O (o) /U (u) /P -4 >>' });
  const bytes = encrypted.toString('latin1').replace('/Root 1 0 R', '/Root 1 0 R /Encrypt 5 0 R /ID [(a) (a)]');
  const document = await openPdf(Buffer.from(bytes, 'latin1'));
  expect(document).toMatchObject({ refused: { code: 'reading/unknown-encryption' } });
});

afterEach(() => {
  vi.restoreAllMocks();
});

describe('a PDF with something odd where a dictionary should be is answered, and closed again', () => {
  it.each([
    ['nothing odd', {}, 'fit'],
    ['resources that are a list', { 3: page('/Parent 2 0 R /Resources [ ]') }, 'reading/damaged'],
    ['resources that are a number', { 3: page('/Parent 2 0 R /Resources 7') }, 'reading/damaged'],
    ['a page that is its own parent', { 3: page('/Parent 3 0 R') }, 'fit'],
    ['a parent that is a number', { 3: page('/Parent 9') }, 'fit'],
    ['pages that hold themselves', { 2: '<< /Type /Pages /Kids [3 0 R 2 0 R] /Count 1 >>' }, 'reading/damaged'],
    ['pages without kids', { 2: '<< /Type /Pages /Count 1 >>' }, 'reading/damaged'],
    ['a kid that is a number', { 2: '<< /Type /Pages /Kids [5] /Count 1 >>' }, 'reading/damaged'],
    ['no pages at all', { 1: '<< /Type /Catalog >>' }, 'reading/no-pages'],
  ] as const)('%s', async (_, odd, expected) => {
    const engine = await pdfium();
    const load = vi.spyOn(engine, 'FPDF_LoadMemDocument');
    const close = vi.spyOn(engine, 'FPDF_CloseDocument');
    expect(await openedAs({ ...GOOD, ...odd })).toBe(expected);
    expect(close).toHaveBeenCalledTimes(load.mock.results.filter(({ value }) => value !== 0).length);
  });
});

describe('a page that the engine can’t load', () => {
  const leaf = {
    ...GOOD,
    2: '<< /Type /Pages /Kids [3 0 R 5 0 R] /Count 2 >>',
    5: page('/Kids [] /Parent 2 0 R'),
  };

  it.each(['[-100 -100 300 400]', '[-5 -700 612 792]', '[0 0 288 432]'])(
    'has no size, and not that of the document before it: %s',
    async (box) => {
      const before = await openedAs({ ...GOOD, 3: page('/Parent 2 0 R').replace('[0 0 288 432]', box) });
      expect(before).toBe('fit');
      expect(await openedAs(leaf)).toMatch(/^reading\/(damaged|huge-page)$/);
    },
  );
});
