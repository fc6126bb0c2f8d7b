import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fingerprintFile, sha256 } from '../../src/files/fingerprint.js';
import { temporaryFolder } from './temp-folder.js';

// FIPS 180-4 example values for SHA-256 (NIST, "abc" and the empty message); from memory, coreutils' sha256sum gives the same.
const OF_ABC = 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad';
const OF_NOTHING = 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855';

describe('fingerprint', () => {
  it('gives the published hashes', async () => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, 'abc'), 'abc');
    writeFileSync(join(folder, 'empty'), '');
    expect(sha256('abc')).toBe(OF_ABC);
    expect(await fingerprintFile(join(folder, 'abc'))).toMatchObject({ ok: true, sha256: OF_ABC, size: 3 });
    expect(await fingerprintFile(join(folder, 'empty'), 10)).toMatchObject({ ok: true, sha256: OF_NOTHING, size: 0 });
  });

  it('tells why a file can not be read, and not where it lies: accounts hold these words', async () => {
    const folder = temporaryFolder();
    const result = await fingerprintFile(join(folder, 'none'));
    expect(result).toMatchObject({ ok: false, reason: { code: 'files/missing-folder' } });
    expect(JSON.stringify(result)).not.toContain(folder);
  });

  it('gives the first bytes of a file that comes in several pieces', async () => {
    const path = join(temporaryFolder(), 'large');
    const bytes = Uint8Array.from({ length: 5_000_000 }, (_, i) => i % 251);
    writeFileSync(path, bytes);
    const result = await fingerprintFile(path, 300_000);
    if (!result.ok) throw new Error('must be readable');
    expect(result.size).toBe(5_000_000);
    expect(result.sha256).toBe(sha256(bytes));
    expect(Buffer.compare(result.head, bytes.subarray(0, 300_000))).toBe(0);
  });

  it('reports what can not be read', async () => {
    const folder = temporaryFolder();
    expect(await fingerprintFile(join(folder, 'none'))).toMatchObject({ ok: false, reason: { code: 'files/missing-folder' } });
    expect(await fingerprintFile(folder)).toMatchObject({ ok: false, reason: { code: 'files/is-folder' } });
  });
});
