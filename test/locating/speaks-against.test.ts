import { describe, expect, it } from 'vitest';
import { saidIn } from '../../src/locating/kind-of-words.js';
import { speaksAgainst } from '../../src/locating/speaks-against.js';
import type { Code } from '../../src/reading/source.js';
import { phrasesOf } from '../../src/reading/word-lines.js';
import { drawnPage } from '../reading/drawn-page.js';
import { Drawing } from '../samples/drawing.js';

const BOX = { x: 40, y: 60, width: 288, height: 432 };
const ADDRESS = ['Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187'];

async function against(draw: (page: Drawing) => unknown, read: readonly string[] = []): Promise<string | undefined> {
  const drawing = new Drawing(612, 792);
  drawing.frame(BOX.x, BOX.y, BOX.width, BOX.height, 1);
  draw(drawing);
  const page = await drawnPage(drawing);
  const phrases = phrasesOf(page.words());
  const label = { box: BOX, edge: 'frame', codes: [], score: 1, evidence: [], said: saidIn(phrases, BOX) } as const;
  return speaksAgainst(label, { page, phrases }, read.map(code));
}
const code = (text: string): Code => ({ bytes: Buffer.from(text).toString('hex'), symbology: 'Code 128' }) as Code;
const address = (d: Drawing, y = 120): Drawing => {
  d.block(60, y, ADDRESS, { size: 12 });
  return d;
};

describe('what speaks against a label', () => {
  it('is nothing where an address stands with a word of a label, a second address or an international number', async () => {
    expect(await against((d) => address(d).text(60, 300, 'Weight 2 kg'))).toBeUndefined();
    expect(await against((d) => address(address(d), 300))).toBeUndefined();
    expect(await against((d) => address(d).text(60, 300, 'RX 433 195 708 ZZ'))).toBeUndefined();
  });

  it("is that it is written as running text is, on a larger page without a frame of a label's size", async () => {
    const box = { x: 40, y: 60, width: 300, height: 260 };
    const drawing = address(address(new Drawing(612, 792), 90), 190);
    const page = await drawnPage(drawing);
    const phrases = phrasesOf(page.words());
    const label = { box, edge: 'ink', codes: [], score: 1, evidence: [], said: saidIn(phrases, box) } as const;
    const why = 'the ink 4.17×3.61 in is written as a letter or a form is: all but its title in one size, and one code';
    expect(speaksAgainst(label, { page, phrases }, [code('COL555014277')])).toBe(why);
    expect(speaksAgainst(label, { page, phrases }, [code('COL555014277'), code('EX00187')])).toBeUndefined();
  });

  it('is what papers have, and says so', async () => {
    const both = (d: Drawing): Drawing => address(address(d), 300);
    expect(await against((d) => both(d).text(60, 400, 'Put this inside the parcel', { size: 9 }))).toBe(
      'on the frame 4.00×6.00 in stands "inside the parcel", as on papers that are no labels',
    );
    expect(await against((d) => both(d).text(60, 400, 'Name', { size: 9 }).rect(90, 401, 120, 0.8))).toBe(
      'on the frame 4.00×6.00 in stands a place to write in, as on papers that are no labels',
    );
  });

  it('is a caption that calls it a figure, and no sort code that begins like one', async () => {
    const captioned = (caption: string) => against((d) => address(address(d), 300).text(60, 400, caption, { size: 20 }));
    expect(await captioned('Obr. 8')).toBe('the words beside the frame 4.00×6.00 in call it a figure or an example');
    expect(await captioned('Fig 8')).toBe('the words beside the frame 4.00×6.00 in call it a figure or an example');
    expect(await captioned('OBR 8')).toBeUndefined();
  });

  it('is that each address stands in one line, as in a form, where there are words of a label, too', async () => {
    const fields = (d: Drawing): Drawing =>
      d
        .text(60, 120, 'Sender', { size: 9 })
        .text(120, 120, 'Slip Studio, 4 Sample Lane, 00187 Larch Halt', { size: 9 })
        .text(60, 160, 'Receiver', { size: 9 })
        .text(120, 160, 'Ada Invented, 14 Sample Street, 00188 Larch Halt', { size: 9 });
    expect(await against(fields)).toBe('each address on the frame 4.00×6.00 in stands in one line, as in a list or a form');
    expect(await against((d) => address(fields(d), 300))).toBeUndefined();
  });

  it('is an address missing, or alone', async () => {
    expect(await against((d) => d.text(60, 120, 'Tracking no and weight, from and to'))).toBe(
      'no address stands on the frame 4.00×6.00 in',
    );
    expect(await against(address)).toBe('an address stands on the frame 4.00×6.00 in, but nothing else of a label');
  });

  it('is nothing where two codes say different things, or one an international number', async () => {
    expect(await against(address, ['9059961705749', '00187'])).toBeUndefined();
    expect(await against(address, ['RX433195708ZZ'])).toBeUndefined();
    expect(await against(address, ['9059961705749', '9059961705749'])).toMatch(/nothing else of a label$/);
  });

  it('is not asked where too little can be read', async () => {
    expect(await against((d) => d.text(60, 120, 'Halt'))).toBeUndefined();
  });

  it.each(['Figure 1: how it looks', 'Abb. 2', 'It looks like this example:', 'So sieht es aus, zum Beispiel:'])(
    'is the caption "%s"',
    async (words) => {
      const label = (d: Drawing): Drawing => address(d).text(60, 300, 'Weight 2 kg');
      expect(await against((d) => label(d).text(60, 515, words))).toMatch(/figure or an example$/);
      expect(await against((d) => label(d).text(60, 600, words))).toBeUndefined();
      // What was taken for a label may reach as far as the words below the figure.
      const within = expect(await against((d) => label(d).text(60, 400, words)));
      if (/\d/.test(words)) within.toMatch(/figure or an example$/);
      else within.toBeUndefined();
    },
  );

  it('is no mark of a sample beside it', async () => {
    expect(await against((d) => address(d).text(60, 300, 'Weight 2 kg').text(60, 515, 'Example, not valid for carriage'))).toBeUndefined();
  });
});
