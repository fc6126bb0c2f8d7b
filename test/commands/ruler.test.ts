import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runRuler, type RulerArgs } from '../../src/commands/ruler.js';
import { isRulerPage } from '../../src/ruler/ruler-page.js';
import { temporaryFolder } from '../batch/inbox.js';
import { capture, type Captured } from './capture.js';

const NOTHING: RulerArgs = { media: undefined, grid: undefined, out: undefined };

async function ruler(folder: string, args: Partial<RulerArgs> = {}): Promise<Captured & { readonly bytes: readonly Uint8Array[] }> {
  const bytes: Uint8Array[] = [];
  const told = await capture((io) => runRuler({ ...NOTHING, ...args }, { ...io, folder, bytes: (data) => void bytes.push(data) }));
  return { ...told, bytes };
}

describe('ruler', () => {
  it('writes ruler.pdf, says so, and writes over it when it is asked again', async () => {
    const folder = temporaryFolder();
    const first = await ruler(folder);
    expect([first.exitCode, first.err, first.bytes]).toEqual([0, '', []]);
    expect(first.out).toMatch(/^ruler\.pdf: one page of 4x6in for 203dpi\n\nPrint it once at 100 %/);
    const page = readFileSync(join(folder, 'ruler.pdf'));
    expect(isRulerPage(page)).toBe(true);
    const second = await ruler(folder, { media: 'a6', grid: '12dpmm' });
    expect([second.exitCode, second.err]).toEqual([0, '']);
    expect(Buffer.compare(page, readFileSync(join(folder, 'ruler.pdf')))).not.toBe(0);
    expect(readdirSync(folder)).toEqual(['ruler.pdf']);
  });

  it('writes nothing over a file that is no ruler page, nor over a folder', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'ruler.pdf'), 'mine');
    mkdirSync(join(folder, 'dir'));
    for (const out of [undefined, 'dir']) {
      const { exitCode, err, out: said } = await ruler(folder, { out });
      expect([exitCode, said]).toEqual([2, '']);
      expect(err).toMatch(/^error: (?:ruler\.pdf|dir) is there already, and it is no ruler page .*\n {2}do: Give another name: --out/);
    }
    expect(readFileSync(join(folder, 'ruler.pdf'), 'utf8')).toBe('mine');
    expect(readdirSync(join(folder, 'dir'))).toEqual([]);
  });

  it('writes to the standard output, and the words elsewhere', async () => {
    const folder = temporaryFolder();
    const { exitCode, out, err, bytes } = await ruler(folder, { out: '-' });
    expect([exitCode, out, bytes.length]).toEqual([0, '', 1]);
    expect(isRulerPage(bytes[0] ?? new Uint8Array())).toBe(true);
    expect(err).toMatch(/^Print it once/);
    expect(readdirSync(folder)).toEqual([]);
  });

  it('says what is wrong with media and grid, all at once, and starts nothing', async () => {
    const folder = temporaryFolder();
    const { exitCode, err } = await ruler(folder, { media: '4x6inch', grid: '203dp' });
    expect(exitCode).toBe(2);
    expect(err).toContain('--media is “4x6inch”');
    expect(err).toContain('Did you mean 203dpi?');
    const small = await ruler(folder, { media: '2x1in' });
    expect(small.exitCode).toBe(2);
    expect(small.err).toMatch(/^error: a page of 2x1in is too small for the ruler, which takes 99\.5 mm across and 147\.5 mm down/);
    expect(readdirSync(folder)).toEqual([]);
  });

  it('ends with 3 and a reason where it can not write', async () => {
    const { exitCode, err, out } = await ruler(temporaryFolder(), { out: 'no/such/ruler.pdf' });
    expect([exitCode, out]).toEqual([3, '']);
    expect(err).toMatch(/\[files\/missing-folder\]\n {2}do: /);
  });
});
