import { statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesUnder, isText, ROOT, sources, textOf } from './tree.js';

const size = (file: string): number => statSync(join(ROOT, file)).size;

/** Joins words to a path, so that this file doesn't find itself. */
const path = (...words: readonly string[]): string => words.join('/');

/** Things that are true on one machine only, or that speak of the workplace. */
const MACHINE_THINGS: readonly RegExp[] = [
  new RegExp(path('', 'work', '')),
  new RegExp(path('', 'tmp', '[a-z]')),
  new RegExp(path('', 'home', '[a-z]')),
  new RegExp(path('', 'Users', '[A-Za-z]')),
  new RegExp(['[A-Z]:', 'Users'].join('\\\\')),
  /registry\.[a-z]+\.[a-z]+/,
  /https?:\/\/(?:localhost|127\.|10\.|192\.168\.)/,
  new RegExp(path('\\.\\.', 'shared', '')),
];

const machineThingIn = (text: string): string | undefined => MACHINE_THINGS.find((each) => each.test(text))?.source;

describe('files of the project', () => {
  it('are small: source files of at most 14 KB, hardly any above 10 KB', () => {
    expect(sources().length).toBeGreaterThan(10);
    expect(sources().filter((each) => size(each) > 14 * 1024)).toEqual([]);
    expect(sources().filter((each) => size(each) > 10 * 1024).length).toBeLessThanOrEqual(Math.ceil(sources().length * 0.05));
  });

  it('hold no machine paths and no hosts', () => {
    const texts = filesUnder('').filter(isText);
    expect(texts).toContain('package.json');
    expect(texts).toContain('.npmrc');
    const found = texts.map((each) => `${each}: ${machineThingIn(textOf(each)) ?? ''}`).filter((line) => !line.endsWith(': '));
    expect(found).toEqual([]);
  });

  it('would be caught holding one', () => {
    expect(machineThingIn(path('see ', 'work', 'x'))).toBeDefined();
    expect(machineThingIn(['registry', 'example', 'com'].join('.'))).toBeDefined();
    expect(machineThingIn('an ordinary /print/stack.pdf at 10mm')).toBeUndefined();
  });

  it('have a lock file that any registry can serve', () => {
    const lock = JSON.parse(textOf('package-lock.json')) as {
      packages: Record<string, { version?: string; resolved?: string; integrity?: string }>;
    };
    const packages = Object.entries(lock.packages).filter(([name]) => name !== '');
    expect(packages.length).toBeGreaterThan(50);
    expect(packages.filter(([, each]) => each.resolved !== undefined).map(([name]) => name)).toEqual([]);
    expect(packages.filter(([, each]) => each.integrity === undefined).map(([name]) => name)).toEqual([]);
  });

  it('are pinned: every dependency has one exact version', () => {
    const manifest = JSON.parse(textOf('package.json')) as Record<'dependencies' | 'devDependencies', Record<string, string>>;
    const loose = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies }).filter(
      ([, version]) => !/^(?:npm:@?[a-z/-]+@)?\d+\.\d+\.\d+$/.test(version),
    );
    expect(loose).toEqual([]);
  });
});
