import { describe, expect, it } from 'vitest';
import { sniff, SNIFF_BYTES } from '../../src/intake/sniff.js';
import { NO_LABELS, smallPdf } from '../faults/inputs/documents.js';
import { chainTiffs, fromGrey, pattern } from '../faults/inputs/pictures.js';
import { zipOf } from '../faults/inputs/zips.js';

const head = (bytes: Uint8Array): Uint8Array => bytes.subarray(0, SNIFF_BYTES);

describe('sniff', () => {
  it.each(NO_LABELS)('refuses %s as %s in one line with a remedy', (_what, code, content) => {
    const sniffed = sniff(head(content));
    if (sniffed.kind !== 'refused') throw new Error(`taken for ${sniffed.kind}`);
    expect(sniffed.reason.code).toBe(code);
    expect(sniffed.reason.message).not.toMatch(/\n|\.$/);
    expect(sniffed.reason.remedy).toMatch(/^[A-Z].*\.$/);
  });

  it('never tells what the file says', () => {
    for (const [, , content] of NO_LABELS) {
      const sniffed = sniff(head(content));
      expect(JSON.stringify(sniffed)).not.toMatch(/Mug|Weg 1|sign in<|SAMPLE|1001/);
    }
  });

  it('finds a PDF by its header within the first 1024 bytes', () => {
    expect(sniff(smallPdf('a'))).toEqual({ kind: 'pdf' });
    expect(sniff(Buffer.concat([Buffer.from('Content-Type: application/pdf\r\n\r\n'), smallPdf('a')]))).toEqual({ kind: 'pdf' });
    expect(sniff(Buffer.concat([Buffer.alloc(1000), smallPdf('a')]))).toEqual({ kind: 'pdf' });
    expect(sniff(Buffer.concat([Buffer.alloc(1020), smallPdf('a')]))).toMatchObject({ kind: 'refused' });
  });

  it('tells pictures and ZIPs by their first bytes', async () => {
    const grey = fromGrey(pattern(40, 60));
    const tiff = await grey.clone().tiff().toBuffer();
    const drawn: [string, Uint8Array][] = [
      ['png', await grey.clone().png().toBuffer()],
      ['jpeg', await grey.clone().jpeg().toBuffer()],
      ['gif', await grey.clone().gif().toBuffer()],
      ['webp', await grey.clone().webp().toBuffer()],
      ['tiff', tiff],
      ['tiff', chainTiffs([tiff, tiff])],
      ['tiff', await grey.clone().tiff({ bigtiff: true }).toBuffer()],
    ];
    for (const [format, bytes] of drawn) expect(sniff(head(bytes))).toEqual({ kind: 'picture', format });
    expect(sniff(zipOf([{ name: 'a.pdf', data: smallPdf('a') }]))).toEqual({ kind: 'zip' });
    expect(sniff(zipOf([]))).toEqual({ kind: 'zip' });
  });

  it('gives an answer for any start of any document', () => {
    for (const [, , content] of NO_LABELS)
      for (let length = 0; length < Math.min(content.length, 60); length++)
        expect(['pdf', 'zip', 'picture', 'refused']).toContain(sniff(content.subarray(0, length)).kind);
  });
});
