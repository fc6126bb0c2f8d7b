import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';

/** A fixed date for programs that write one. */
const ENV = { ...process.env, SOURCE_DATE_EPOCH: '1577836800', LC_ALL: 'C.UTF-8', TZ: 'UTC' };

export function run(program: string, args: readonly string[], input?: string): Buffer {
  return execFileSync(program, args, { input, env: ENV, maxBuffer: 512 * 1024 * 1024, stdio: ['pipe', 'pipe', 'pipe'] });
}

/** Chromium with a profile of its own, gone afterwards. */
export function printHtml(html: string, pdf: string, folder: string): void {
  const profile = join(folder, 'profile');
  const flags = ['--headless', '--no-sandbox', '--disable-gpu', '--no-pdf-header-footer', `--user-data-dir=${profile}`];
  run('chromium', [...flags, `--print-to-pdf=${pdf}`, `file://${html}`]);
  rmSync(profile, { recursive: true, force: true });
}

export function convertOffice(file: string, folder: string): void {
  run('soffice', [`-env:UserInstallation=file://${folder}/office`, '--headless', '--convert-to', 'pdf', '--outdir', folder, file]);
}
