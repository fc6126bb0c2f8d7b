import { readFile } from 'node:fs/promises';
import { fileFailure } from '../files/failure.js';
import type { Reason } from '../sheet/sheet.js';
import { INTAKE_LIMITS, type IntakeLimits } from './limits.js';
import type { WorkItem } from './work.js';
import { readZipEntry } from './zip.js';

/**
 * The bytes of one document, from its file or out of its ZIP. What became unreadable since it was found comes back as a
 * reason. Whether it still has the content that was found is for the caller to check, by `WorkItem.sha256`.
 */
export async function readWork(
  item: Pick<WorkItem, 'path' | 'entry'>,
  limits: IntakeLimits = INTAKE_LIMITS,
): Promise<{ readonly ok: true; readonly bytes: Uint8Array } | { readonly ok: false; readonly reason: Reason }> {
  if (item.entry !== undefined) return readZipEntry(item.path, item.entry, limits);
  try {
    return { ok: true, bytes: await readFile(item.path) };
  } catch (error) {
    return fileFailure(error, 'the file can not be read');
  }
}
