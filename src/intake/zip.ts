import { stat } from 'node:fs/promises';
import type { Readable } from 'node:stream';
import { crc32 } from 'node:zlib';
import { getFileNameLowLevel, openPromise, type Entry, type ZipFile } from 'yauzl';
import { errnoOf, fileFailure } from '../files/failure.js';
import { fingerprintStream, type Fingerprint } from '../files/fingerprint.js';
import type { Reason } from '../sheet/sheet.js';
import { KINDS } from './kinds.js';
import { RATIO_MATTERS_FROM, type IntakeLimits } from './limits.js';
import { ENTRY_DAMAGED, ZIP_DAMAGED, ZIP_EMPTY, ZIP_ENCRYPTED, ZIP_METHOD, ZIP_SAME_NAME, tooLarge, zipTooLarge } from './reasons.js';
import { SNIFF_BYTES } from './sniff.js';

/** One file in a ZIP: its content's fingerprint, or why it can't be had. `name` is as the ZIP has it, only ever used to find it again. */
export type ZipEntry = { readonly name: string } & (
  { readonly ok: true; readonly fingerprint: Fingerprint } | { readonly ok: false; readonly reason: Reason }
);
export type ZipListing =
  | { readonly ok: true; readonly entries: readonly ZipEntry[] }
  /** The ZIP as a whole is refused. */
  | { readonly ok: false; readonly reason: Reason };

/**
 * Every file in a ZIP, each read once for its fingerprint; nothing is written anywhere. One damaged file spoils only itself;
 * a ZIP that is locked, damaged or beyond the limits is refused as a whole, before anything is unpacked. Never throws for
 * bad bytes.
 */
export async function listZip(path: string, limits: IntakeLimits): Promise<ZipListing> {
  return withZip(path, limits, async (zip, files) => {
    const entries: ZipEntry[] = [];
    const names = new Map<string, number>();
    for (const { name } of files) names.set(name, (names.get(name) ?? 0) + 1);
    for (const { name, entry } of files) {
      const reason = (names.get(name) ?? 0) > 1 ? ZIP_SAME_NAME : refusalOf(entry, limits);
      entries.push(reason ? { name, ok: false, reason } : { name, ...(await readEntry(zip, entry)) });
    }
    return { ok: true, entries };
  });
}

/** The bytes of one file in a ZIP. @param name as `listZip` gave it. */
export async function readZipEntry(
  path: string,
  name: string,
  limits: IntakeLimits,
): Promise<{ readonly ok: true; readonly bytes: Uint8Array } | { readonly ok: false; readonly reason: Reason }> {
  return withZip(path, limits, async (zip, files) => {
    const found = files.find((file) => file.name === name);
    if (!found) return { ok: false, reason: ZIP_DAMAGED };
    const reason = refusalOf(found.entry, limits);
    if (reason) return { ok: false, reason };
    const read = await readEntry(zip, found.entry, found.entry.uncompressedSize);
    return read.ok ? { ok: true, bytes: read.fingerprint.head } : read;
  });
}

interface ZipFileEntry {
  readonly name: string;
  readonly entry: Entry;
}

/** Opens a ZIP, reads and checks its directory, hands it on and closes it. */
async function withZip<T>(
  path: string,
  limits: IntakeLimits,
  use: (zip: ZipFile, files: readonly ZipFileEntry[]) => Promise<T>,
): Promise<T | { readonly ok: false; readonly reason: Reason }> {
  let zip: ZipFile | undefined;
  try {
    // Names are decoded here: the library refuses a whole ZIP for one odd name, which harms nobody when nothing is unpacked to disk.
    zip = await openPromise(path, { autoClose: false, decodeStrings: false, validateEntrySizes: true });
    const listing = await directoryOf(path, zip, limits);
    return 'reason' in listing ? { ok: false, reason: listing.reason } : await use(zip, listing.files);
  } catch (error) {
    if (errnoOf(error) !== undefined) return fileFailure(error, 'cannot read the ZIP');
    return { ok: false, reason: reasonOf(error) };
  } finally {
    zip?.close();
  }
}

type Directory = { readonly files: readonly ZipFileEntry[] } | { readonly reason: Reason };

/** Of the last ZIP: its files are fetched one after the other, and to go through all names for each would take longer than the label. */
let last: { readonly key: string; readonly limits: IntakeLimits; readonly directory: Directory } | undefined;

async function directoryOf(path: string, zip: ZipFile, limits: IntakeLimits): Promise<Directory> {
  const { size, mtimeMs, ino } = await stat(path);
  const key = JSON.stringify([path, size, mtimeMs, ino]);
  if (last?.key === key && last.limits === limits) return last.directory;
  counts.directories += 1;
  const directory = await readDirectory(zip, limits);
  last = { key, limits, directory };
  return directory;
}

/** How often the names of a ZIP were gone through, for a test: it must not be once for each. */
export const counts = { directories: 0 };

async function readDirectory(zip: ZipFile, limits: IntakeLimits): Promise<Directory> {
  if (zip.entryCount > limits.zipEntries) return { reason: zipTooLarge(`holds ${zip.entryCount} files, more than ${limits.zipEntries}`) };
  const files: ZipFileEntry[] = [];
  let total = 0;
  for await (const entry of zip.eachEntry()) {
    const name = getFileNameLowLevel(entry.generalPurposeBitFlag, entry.fileNameRaw, entry.extraFields, false);
    if (name.endsWith('/')) continue;
    if (entry.isEncrypted()) return { reason: ZIP_ENCRYPTED };
    if (name === '[Content_Types].xml') return { reason: KINDS.office };
    if (name === 'mimetype' && files.length === 0) return { reason: KINDS.office };
    total += entry.uncompressedSize;
    if (total > limits.zipBytes) return { reason: zipTooLarge('unpacks to more than one ZIP may') };
    const ratio = entry.uncompressedSize / Math.max(1, entry.compressedSize);
    if (ratio > limits.zipRatio && entry.uncompressedSize > RATIO_MATTERS_FROM)
      return { reason: zipTooLarge(`unpacks to ${Math.round(ratio)} times its size, as no label does`) };
    files.push({ name, entry });
  }
  return files.length === 0 ? { reason: ZIP_EMPTY } : { files };
}

function refusalOf(entry: Entry, limits: IntakeLimits): Reason | undefined {
  if (!entry.canDecodeFileData()) return ZIP_METHOD;
  return entry.uncompressedSize > limits.documentBytes ? tooLarge(entry.uncompressedSize, limits.documentBytes) : undefined;
}

async function readEntry(
  zip: ZipFile,
  entry: Entry,
  headBytes = SNIFF_BYTES,
): Promise<{ readonly ok: true; readonly fingerprint: Fingerprint } | { readonly ok: false; readonly reason: Reason }> {
  const check = { crc: 0 };
  try {
    const fingerprint = await fingerprintStream(summed(await zip.openReadStreamPromise(entry), check), headBytes);
    return check.crc === entry.crc32 ? { ok: true, fingerprint } : { ok: false, reason: ENTRY_DAMAGED };
  } catch (error) {
    if (error instanceof TypeError) throw error;
    return { ok: false, reason: ENTRY_DAMAGED };
  }
}

/** The library leaves the check sum to its caller. */
async function* summed(stream: Readable, check: { crc: number }): AsyncGenerator<Buffer> {
  for await (const piece of stream as AsyncIterable<Buffer>) {
    check.crc = crc32(piece, check.crc);
    yield piece;
  }
}

/** The library tells what is wrong with a ZIP only in words. */
function reasonOf(error: unknown): Reason {
  if (error instanceof TypeError || error instanceof RangeError || error instanceof ReferenceError) throw error;
  return error instanceof Error && /encrypt/i.test(error.message) ? ZIP_ENCRYPTED : ZIP_DAMAGED;
}
