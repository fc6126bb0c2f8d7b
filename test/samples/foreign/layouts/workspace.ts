import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Where pictures lie that go into pages; removed when the generator ends. */
export const WORKSPACE = mkdtempSync(join(tmpdir(), 'foreign-pictures-'));
process.on('exit', () => rmSync(WORKSPACE, { recursive: true, force: true }));
