import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { runSteps } from '../../src/commands/steps.js';
import { STEPS } from '../../src/steps/index.js';
import { capture } from './capture.js';

const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..');

describe('steps', () => {
  it('lists every step in recipe order, each option with what may stand there and its default', async () => {
    const { out, exitCode } = await capture((io) => runSteps({}, io));
    expect(exitCode).toBe(0);
    const names = out.split('\n').filter((line) => /^\S/.test(line));
    expect(names).toEqual(STEPS.map((step) => step.name));
    for (const { options } of STEPS) for (const name of Object.keys(options)) expect(out).toContain(`\n    ${name}: `);
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(
      / floor: percentage from 50% to 100% [^:]+ Default: 95%\. bars: whole-dots \| as-drawn [^:]+ Default: whole-dots\. margin: length \(mm, in, pt, dots\)/,
    );
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(96);
  });

  it('gives each step as a JSON line, and their number last', async () => {
    const lines = (await capture((io) => runSteps({ json: true }, io))).out.trimEnd().split('\n');
    const steps = lines.slice(0, -1).map((line) => JSON.parse(line) as { type: string; name: string; options: Record<string, unknown> });
    expect(steps.map((step) => step.name)).toEqual(STEPS.map((step) => step.name));
    expect(steps.every((step) => step.type === 'step')).toBe(true);
    expect(steps.find((step) => step.name === 'scale')?.options['floor']).toMatchObject({ default: 0.95 });
    expect(JSON.parse(lines.at(-1) ?? '')).toEqual({ type: 'listed', steps: STEPS.length });
  });
});

/** README shows the table between these two lines. `UPDATE_GOLDEN=1` puts the fresh one there. */
const BEGIN = '<!-- steps:begin -->\n';
const END = '<!-- steps:end -->';

describe('the table of steps', () => {
  it('has a row for each step, and no bar that would end a cell', async () => {
    const rows = (await capture((io) => runSteps({ table: true }, io))).out.split('\n').filter((line) => line.startsWith('| `'));
    expect(rows.map((row) => /^\| `([a-z-]+)` \|/.exec(row)?.[1])).toEqual(STEPS.map((step) => step.name));
    for (const row of rows) expect(row.replaceAll('\\|', '').match(/\|/g)).toHaveLength(4);
  });

  it.runIf(existsSync(join(ROOT, 'README.md')))('is fresh in README', async () => {
    const { out } = await capture((io) => runSteps({ table: true }, io));
    const readme = readFileSync(join(ROOT, 'README.md'), 'utf8');
    const [start, end] = [readme.indexOf(BEGIN), readme.indexOf(END)];
    expect(start, 'README.md has no line <!-- steps:begin -->').toBeGreaterThanOrEqual(0);
    expect(end).toBeGreaterThan(start);
    const fresh = `${readme.slice(0, start)}${BEGIN}${out}${readme.slice(end)}`;
    if (process.env['UPDATE_GOLDEN'] === '1') writeFileSync(join(ROOT, 'README.md'), fresh);
    expect(readFileSync(join(ROOT, 'README.md'), 'utf8')).toBe(fresh);
  });
});
