import { existsSync, mkdirSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { builtCli, runToEnd, type Ended } from '../built.js';
import { ROOT } from '../house/tree.js';

/** The environment of a person's shell: none of what `npm test` sets for its own children. */
export const shellEnv = (prefix: string): NodeJS.ProcessEnv => ({
  ...Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_|^NODE_(?!EXTRA_CA_CERTS)|^VITEST|^SLIPYARD/i.test(name))),
  PATH: [join(prefix, 'bin'), process.env['PATH'] ?? ''].join(delimiter),
  NO_COLOR: '1',
});

async function done(step: string, ended: Promise<Ended>): Promise<Ended> {
  const result = await ended;
  if (result.code !== 0) throw new Error(`${step} ended with ${String(result.code)}:\n${result.stderr}${result.stdout}`);
  return result;
}

/**
 * Does README's two lines of installation: packs this checkout and installs the tarball into an empty prefix.
 * @param folder an empty folder; gets `prefix` and the tarball
 * @returns the prefix; its `bin` holds the command
 */
export async function installFromTarball(folder: string): Promise<string> {
  // `npm test` has built just before; building here again would change dist under other tests' feet.
  builtCli();
  const prefix = join(folder, 'prefix');
  mkdirSync(prefix);
  const env = shellEnv(prefix);
  const packed = await done('npm pack', runToEnd('npm', ['pack', '--ignore-scripts', '--pack-destination', folder], ROOT, env));
  const tarball = packed.stdout.trim().split('\n').at(-1) ?? '';
  await done('npm install -g', runToEnd('npm', ['install', '-g', '--prefix', prefix, '--prefer-offline', `./${tarball}`], folder, env));
  if (!existsSync(join(prefix, 'bin', 'slipyard'))) throw new Error('the tarball installed no command');
  return prefix;
}
