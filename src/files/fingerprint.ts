import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { fileFailure, type FileResult } from './failure.js';

export interface Fingerprint {
  /** SHA-256 of the content, lower-case hex. */
  readonly sha256: string;
  /** Bytes. */
  readonly size: number;
  /** The first bytes of the content, as many as were asked for or as there are. */
  readonly head: Uint8Array;
}

export const sha256 = (data: Uint8Array | string): string => createHash('sha256').update(data).digest('hex');

/** Reads a stream once: hash, length and first bytes. Never holds more than a piece of it. Throws the stream's errors. */
export async function fingerprintStream(stream: AsyncIterable<unknown>, headBytes: number): Promise<Fingerprint> {
  const hash = createHash('sha256');
  const head: Uint8Array[] = [];
  let size = 0;
  for await (const piece of stream) {
    if (!(piece instanceof Uint8Array)) throw new TypeError('fingerprint: the stream must give bytes');
    hash.update(piece);
    if (size < headBytes) head.push(piece.subarray(0, headBytes - size));
    size += piece.byteLength;
  }
  return { sha256: hash.digest('hex'), size, head: Buffer.concat(head) };
}

/** Up to here (bytes) a file is read in one go, which is several times faster for the small files that labels are. */
const IN_ONE_GO = 4_000_000;

/** The fingerprint of a file. A file that can't be read comes back as a reason, which doesn't name it: accounts must not tell of the machine. */
export async function fingerprintFile(path: string, headBytes = 0): Promise<FileResult<Fingerprint>> {
  try {
    if ((await stat(path)).size <= IN_ONE_GO) {
      const bytes = await readFile(path);
      return { ok: true, sha256: sha256(bytes), size: bytes.length, head: bytes.subarray(0, headBytes) };
    }
    return { ok: true, ...(await fingerprintStream(createReadStream(path, { highWaterMark: 1 << 18 }), headBytes)) };
  } catch (error) {
    return fileFailure(error, 'the file can not be read');
  }
}
