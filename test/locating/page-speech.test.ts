import { describe, expect, it } from 'vitest';
import { inkBlobs } from '../../src/locating/ink-blobs.js';
import { withoutHints, withoutSpeech } from '../../src/locating/page-speech.js';
import { bottom } from '../../src/geometry/box.js';
import { drawnPage } from '../reading/drawn-page.js';
import { code128 } from '../samples/code-art.js';
import { Drawing } from '../samples/drawing.js';

describe('withoutSpeech', () => {
  const page = (width: number, height: number, title: readonly string[], gap: number) => {
    const d = new Drawing(width, height);
    d.block(60, 60 - 14 * (title.length - 1), title, { size: 12 }, 14 / 12);
    d.frame(60, 64 + gap, 280, 180, 1.5).bars(code128('SAMPLE-000001'), 200, 150, 1.06, 60);
    return drawnPage(d);
  };
  const top = async (made: ReturnType<typeof page>, without: typeof withoutSpeech): Promise<number> => {
    const seen = await made;
    return Math.min(...without(seen, inkBlobs(seen.ink())).map(({ y }) => y));
  };

  it('leaves out a title over a label, whole, and keeps other words', async () => {
    expect(await top(page(612, 792, ['Your label', 'for order SAMPLE'], 15), withoutSpeech)).toBeGreaterThan(75);
    expect(await top(page(612, 792, ['Parcel service', 'SAMPLE'], 15), withoutSpeech)).toBeLessThan(40);
  });

  it('keeps what stands closer than a line to other ink, for hints do not', async () => {
    expect(await top(page(612, 792, ['Cut along the line'], 3), withoutSpeech)).toBeLessThan(60);
    expect(await top(page(612, 792, ['Cut along the line'], 3), withoutHints)).toBeGreaterThan(63);
  });

  it('keeps an address, and everything on paper that a label fills', async () => {
    expect(
      await top(page(612, 792, ['Your sender', 'Ada Invented', '14 Sample Lane', 'Larch Halt EX 00187'], 15), withoutSpeech),
    ).toBeLessThan(30);
    expect(await top(page(420, 595, ['Your label'], 15), withoutSpeech)).toBeLessThan(60);
  });

  it('leaves out a list of steps with its title, but for one close to a code', async () => {
    const listed = async (y: number) => {
      const d = new Drawing(612, 792).bars(code128('SAMPLE-000001'), 100, 60, 1.06, 60);
      d.text(60, y, 'Then', { size: 12 });
      d.block(60, y + 20, ['1. Print this page at 100 %.', '2. Fold the sheet.', '3. Tape it to the box.'], { size: 9 });
      const seen = await drawnPage(d);
      return Math.max(...withoutSpeech(seen, inkBlobs(seen.ink())).map(bottom));
    };
    expect(await listed(200)).toBeLessThan(125);
    expect(await listed(60)).toBeGreaterThan(95);
  });

  it('leaves out the title over a hint', async () => {
    const d = new Drawing(612, 792).text(60, 40, 'Parcel tracked', { size: 14 }).text(60, 60, 'Cut along the line', { size: 9 });
    const seen = await drawnPage(d.frame(200, 120, 280, 180, 1.5));
    expect(Math.min(...withoutSpeech(seen, inkBlobs(seen.ink())).map(({ y }) => y))).toBeGreaterThan(110);
  });

  it('leaves out the title over a hint below a label, where it stands far from that', async () => {
    const foot = async (y: number) => {
      const d = new Drawing(612, 792).frame(60, 60, 280, 180, 1.5);
      d.text(60, y, 'Parcel tracked', { size: 12 }).text(60, y + 20, 'Print this page at 100 %, fold it along the middle and slide it into the pouch.', { size: 9 }); // prettier-ignore
      const seen = await drawnPage(d);
      return Math.max(...withoutSpeech(seen, inkBlobs(seen.ink())).map(bottom));
    };
    expect(await foot(310)).toBeLessThan(245);
    expect(await foot(270)).toBeGreaterThan(260);
  });

  it('keeps the label', async () => {
    const seen = await page(612, 792, ['Your label'], 15);
    const kept = withoutSpeech(seen, inkBlobs(seen.ink()));
    expect(Math.max(...kept.map(bottom))).toBeGreaterThan(255);
  });
});
