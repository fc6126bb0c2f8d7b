import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { loadPipeline } from '../../src/config/load-pipeline.js';
import { gridOf } from '../../src/geometry/grid.js';
import { mediaNamed } from '../../src/geometry/media.js';
import { rulerChart } from '../../src/ruler/ruler-page.js';
import { looks, rulerText } from '../../src/ruler/words.js';

const flat = (text: string): string => text.replaceAll(/[\s\u00a0]+/g, ' ');

describe('what the ruler says', () => {
  it('is the same on the page and on the screen', () => {
    const grid = gridOf('8dpmm');
    const screen = flat(rulerText('4x6in', grid));
    const page = flat(
      rulerChart(mediaNamed('4x6in'), grid)
        .lines.map(({ text }) => text)
        .join(' '),
    );
    const all = Object.values(looks(grid));
    expect(all.map(({ letter }) => letter).join('')).toBe('ABCDEF');
    for (const { letter, name, text } of all) {
      const said = flat(`${letter} ${name}. ${text}`);
      expect(screen).toContain(said);
      expect(page).toContain(said);
    }
  });

  it('names the grid that the page is for, and its twin to try', () => {
    expect(looks(gridOf('203dpi')).dots.text).toMatch(/grid:.203dpi is right.*--grid.8dpmm/);
    expect(looks(gridOf('12dpmm')).dots.text).toMatch(/grid:.12dpmm is right.*--grid.300dpi/);
  });

  it('has lines that fit a terminal', () => {
    const longest = Math.max(
      ...rulerText('100x150mm', gridOf('203dpi'))
        .split('\n')
        .map((line) => line.length),
    );
    expect(longest).toBeLessThanOrEqual(90);
  });

  it('gives lines that a pipeline takes as they are, with the offset that its own figures make', () => {
    const text = rulerText('4x6in', gridOf('203dpi'));
    const written = (text.split('leave out what is as it should be:')[1] ?? '')
      .trim()
      .split('\n')
      .map((line) => line.trim());
    const folder = mkdtempSync(join(tmpdir(), 'slipyard-ruler-'));
    try {
      const path = join(folder, 'pipeline.yaml');
      expect(written.map((line) => line.split(':')[0])).toEqual(['media', 'grid', 'offset', 'margins', 'print-width']);
      writeFileSync(path, `${written.join('\n')}\nchannels: [{ name: mugs, files: inbox/*, recipe: any-page }]\n`);
      const { value, diagnostics } = loadPipeline(path);
      expect(diagnostics).toEqual([]);
      expect(value?.printer.offset.x).toBeCloseTo((1.5 * 72) / 25.4, 6);
      expect(value?.printer.offset.y).toBeCloseTo((-0.5 * 72) / 25.4, 6);
      expect(text).toMatch(/48\.5 and 50\.5 mm make\s+offset: \[1\.5mm, -0\.5mm\]/);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
