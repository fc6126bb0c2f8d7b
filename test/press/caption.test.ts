import { describe, expect, it } from 'vitest';
import { pressCaptions } from '../../src/press/caption.js';
import { openPdf } from '../../src/reading/open-pdf.js';

const STRIP = { name: 'strip', width: 288, height: 18 };

/** The words of each page as they lie on it. */
async function captions(...texts: readonly string[]): Promise<readonly string[]> {
  const pdf = await openPdf(await pressCaptions(texts, STRIP, 9), { as: 'output' });
  if ('refused' in pdf) throw new Error(pdf.refused.message);
  try {
    return texts.map((_, index) => {
      const page = pdf.page(index + 1);
      expect([page.width, page.height]).toEqual([288, 18]);
      for (const { box } of page.words()) {
        expect(box.x).toBeGreaterThanOrEqual(2);
        expect(box.x + box.width).toBeLessThanOrEqual(286);
      }
      return page
        .words()
        .map(({ text }) => text)
        .join(' ');
    });
  } finally {
    pdf.close();
  }
}

describe('pressCaptions', () => {
  it('sets each on a page of its own', async () => {
    expect(await captions('order 1.pdf, page 1', 'Bögen/order 2.png, page 3')).toEqual([
      'order 1.pdf, page 1',
      'Bögen/order 2.png, page 3',
    ]);
  });

  it('cuts off the beginning of what is too long, and keeps to the page', async () => {
    const [shown = ''] = await captions(`${'downloads/'.repeat(12)}order 17.pdf, page 2`);
    expect(shown).toMatch(/^….*downloads\/order 17\.pdf, page 2$/);
    expect(shown.length).toBeLessThan(70);
  });

  it('leaves letters what they are, though accents stood on them before', async () => {
    for (const [accented, plain] of [
      ['ώύ', 'ωυ'],
      ['ӓӝӥ', 'ажи'],
    ] as const) {
      expect(await captions(accented)).toEqual([accented]);
      expect(await captions(plain)).toEqual([plain]);
    }
  });

  it('puts question marks for characters that the font lacks', async () => {
    expect(await captions('送り状 2.pdf, page 1')).toEqual(['??? 2.pdf, page 1']);
  });
});
