import { describe, expect, it } from 'vitest';
import { decodeText } from '../../src/orders/decode-text.js';
import { Findings } from '../../src/orders/findings.js';
import { ENCODINGS, type Encoding } from '../../src/orders/order-map.js';
import { mapFor, only, read } from './reading.js';

const TEXT = 'Order,Name\r\nA-1,Zoë Müller-Exämple\r\n';

const utf16be = (text: string): Buffer => Buffer.from(text, 'utf16le').swap16();

const decoded = (bytes: Buffer, stated?: Encoding): { text: string | undefined; codes: readonly string[] } => {
  const findings = new Findings('orders.csv');
  const text = decodeText(bytes, stated, findings);
  return { text, codes: findings.list().map(({ code }) => code) };
};

describe('the encoding is told by the content', () => {
  it.each([
    ['UTF-8', Buffer.from(TEXT)],
    ['UTF-8 with its mark', Buffer.from(`\ufeff${TEXT}`)],
    ['UTF-16 LE with its mark', Buffer.from(`\ufeff${TEXT}`, 'utf16le')],
    ['UTF-16 BE with its mark', utf16be(`\ufeff${TEXT}`)],
    ['UTF-16 LE', Buffer.from(TEXT, 'utf16le')],
    ['UTF-16 BE', utf16be(TEXT)],
    ['Windows-1252', Buffer.from(TEXT, 'latin1')],
  ])('%s', (_name, bytes) => {
    expect(decoded(bytes)).toEqual({ text: TEXT, codes: [] });
    expect(only(read(bytes, mapFor(['Order', 'Name']))).buyer).toBe('Zoë Müller-Exämple');
  });

  it('Windows-1252 has signs where Latin-1 has controls (WHATWG Encoding Standard, index windows-1252; from memory)', () => {
    const bytes = Buffer.from([0x80, 0x84, 0x8a, 0x92, 0x96, 0x99, 0x9f, 0xe9]);
    expect(decoded(bytes).text).toBe('€„Š’–™Ÿé');
  });
});

describe('a stated encoding wins', () => {
  it('over what the content says', () => {
    expect(decoded(Buffer.from('é'), 'windows-1252').text).toBe('Ã©');
  });

  it.each(ENCODINGS)('%s reads its own', (encoding) => {
    const bytes = {
      'utf-8': Buffer.from(TEXT),
      'utf-16le': Buffer.from(TEXT, 'utf16le'),
      'utf-16be': utf16be(TEXT),
      'windows-1252': Buffer.from(TEXT, 'latin1'),
    };
    expect(decoded(bytes[encoding], encoding)).toEqual({ text: TEXT, codes: [] });
  });

  it('and is told where it is wrong, with the place', () => {
    const result = read(Buffer.from('Order,Name\nA-1,Zoë\n', 'latin1'), mapFor(['Order', 'Name'], { encoding: 'utf-8' }));
    expect(result.diagnostics).toMatchObject([{ code: 'orders/encoding', place: { line: 2, col: 7 } }]);
    expect(decoded(Buffer.from(TEXT, 'utf16le'), 'utf-8')).toEqual({ text: undefined, codes: ['orders/encoding'] });
  });

  it('a replacement character that the file itself has is no mistake of ours', () => {
    expect(decoded(Buffer.from('a\ufffdb'))).toEqual({ text: 'a\ufffdb', codes: [] });
    expect(decoded(Buffer.from('a\ufffdb'), 'utf-8').codes).toEqual([]);
  });
});
