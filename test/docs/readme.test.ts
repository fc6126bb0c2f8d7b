import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { DIAGNOSTIC_CODES } from '../../src/diagnostics/codes.js';
import { STEPS } from '../../src/steps/index.js';
import { ROOMS } from '../house/rooms.js';
import { ROOT, textOf } from '../house/tree.js';
import { betweenMarkers, fencesOf, withBetween } from './markdown.js';

const readme = textOf('README.md');
const manifest = JSON.parse(textOf('package.json')) as {
  version: string;
  private: boolean;
  scripts: Record<string, string>;
  engines: { node: string };
};
const blocks = fencesOf(readme).map(({ text }) => text);

function recipeTable(): string {
  const rows = readdirSync(join(ROOT, 'recipes'))
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => `| \`${name.replace(/\.yaml$/, '')}\` | ${(parse(textOf(`recipes/${name}`)) as { about: string }).about} |`);
  return ['<!-- prettier-ignore-start -->', '| Recipe | For |', '| --- | --- |', ...rows, '<!-- prettier-ignore-end -->', ''].join('\n');
}

describe('README', () => {
  it('opens with one paragraph that states the job', () => {
    const [title, paragraph = ''] = readme.split('\n\n');
    expect(title).toBe('# Slipyard');
    expect(paragraph).toMatch(/^Slipyard takes .+\.$/s);
  });

  it('gives its two commands in one line each, and line by line', () => {
    for (const script of ['demo', 'test']) {
      const run = script === 'test' ? 'npm test' : `npm run ${script}`;
      expect(blocks).toContain(`npm ci && ${run}`);
      expect(blocks).toContain(`npm ci\n${run}`);
      expect(manifest.scripts[script]).toBeDefined();
    }
  });

  it('names no script that package.json does not have', () => {
    const named = ['README.md', 'DEVELOPERS.md'].flatMap((file) =>
      [...textOf(file).matchAll(/npm run ([a-z:]+)/g)].map(([, name]) => name ?? ''),
    );
    expect(named.length).toBeGreaterThan(1);
    expect(named.filter((name) => !(name in manifest.scripts))).toEqual([]);
  });

  it('installs this version from its own tarball, with the Node that package.json asks for', () => {
    expect(blocks).toContain(`npm pack\nnpm install -g ./slipyard-${manifest.version}.tgz`);
    expect(manifest.private).toBe(true);
    expect(readme).not.toMatch(/npx slipyard/);
    expect(readme).toContain(`${manifest.engines.node.replace('>=', '')} or newer`);
  });

  it('lists every recipe with its own words (UPDATE_GOLDEN=1 puts them there)', () => {
    if (process.env['UPDATE_GOLDEN'] === '1') {
      writeFileSync(join(ROOT, 'README.md'), withBetween(textOf('README.md'), 'recipes', recipeTable()));
    }
    expect(betweenMarkers(textOf('README.md'), 'recipes')).toBe(recipeTable());
  });

  it('explains only codes that a message can carry', () => {
    const prefixes = [...new Set(DIAGNOSTIC_CODES.map((code) => code.split('/')[0] ?? ''))].join('|');
    const named = [...readme.matchAll(new RegExp(`\`((?:${prefixes})/[a-z-]+)\``, 'g'))].map(([, code]) => code ?? '');
    expect(named.length).toBeGreaterThan(8);
    expect(named.filter((code) => !(DIAGNOSTIC_CODES as readonly string[]).includes(code))).toEqual([]);
  });

  it('gives in its advice only steps and options that exist', () => {
    const advised = [...readme.matchAll(/`([a-z-]+): \{ ([a-z-]+): /g)].map(([, step = '', option = '']) => [step, option] as const);
    expect(advised.length).toBeGreaterThan(3);
    for (const [name, option] of advised)
      expect(Object.keys(STEPS.find((step) => step.name === name)?.options ?? {}), name).toContain(option);
  });

  it('links only to files that are there', () => {
    const links = ['README.md', 'DEVELOPERS.md'].flatMap((file) =>
      [...textOf(file).matchAll(/\]\((?!https?:)([^)#]+)/g)].map(([, link]) => link ?? ''),
    );
    expect(links.length).toBeGreaterThan(0);
    expect(links.filter((link) => !existsSync(join(ROOT, link)))).toEqual([]);
  });
});

describe('DEVELOPERS', () => {
  it('lists the folders of src in the order in which they may be imported', () => {
    const rows = [...textOf('DEVELOPERS.md').matchAll(/^\| `([a-z]+|cli\.ts)` +\|/gm)].map(([, name]) => name ?? '');
    expect(rows.slice(0, Object.keys(ROOMS).length)).toEqual(Object.keys(ROOMS));
  });
});
