import { describe, expect, it } from 'vitest';
import { gridOf, type GridName } from '../../../src/geometry/grid.js';
import { linearCode, qrCode } from '../../../src/press/slip/order-code.js';

const room = { width: 190, height: 108 };

describe('a Code 128 of the order number', () => {
  // 0.25 mm is 2, 3 and 6 dots; handbook section 5.4 (computed).
  it.each<[GridName, number, number]>([
    ['203dpi', 2, 3],
    ['8dpmm', 2, 3],
    ['300dpi', 3, 4],
    ['600dpi', 6, 8],
  ])('has bars of whole dots at %s: at least %i, at most %i', (name, least, most) => {
    const grid = gridOf(name);
    for (const text of ['A', 'LK-20417-731', 'LK-20417-731-B', '12345678901234567890']) {
      const code = linearCode(text, grid, room);
      if (!code) throw new Error(`${text} does not fit`);
      const bar = Math.min(...code.marks.map(({ width }) => width));
      expect(bar).toBeGreaterThanOrEqual(least);
      expect(bar).toBeLessThanOrEqual(most);
      for (const { x, width } of code.marks) expect([x % bar, width % bar]).toEqual([0, 0]);
      expect(code.quiet.x).toBe(10 * bar);
      expect((code.width + code.quiet.x) / grid.dpi).toBeLessThanOrEqual(room.width / 72);
      expect(code.height).toBeGreaterThanOrEqual(0.15 * code.width);
    }
  });

  it('is none where it is too long, or has other characters', () => {
    expect(linearCode('LK-20417-731-'.repeat(3), gridOf('203dpi'), room)).toBeUndefined();
    expect(linearCode('заказ', gridOf('203dpi'), room)).toBeUndefined();
    expect(linearCode('', gridOf('203dpi'), room)).toBeUndefined();
  });
});

describe('a QR code of the order number', () => {
  it('has square modules of whole dots, as large as is of use', async () => {
    const code = await qrCode('LK-20417-731', gridOf('203dpi'), room);
    // Version 1 has 21 modules (ISO/IEC 18004); 4 dots are 0.5 mm.
    expect(code).toMatchObject({ kind: 'qr', width: 84, height: 84, quiet: { x: 16, y: 16 } });
    // The finder pattern's first row: seven modules.
    expect(code?.marks[0]).toEqual({ x: 0, y: 0, width: 28, height: 4 });
  });

  it('has smaller modules where there is more to say, and is none where they would be too small', async () => {
    const small = await qrCode('LK-20417-731 '.repeat(12), gridOf('203dpi'), { width: 60, height: 60 });
    expect(Math.min(...(small?.marks.map(({ height }) => height) ?? []))).toBeLessThan(4);
    expect(await qrCode('9'.repeat(4000), gridOf('203dpi'), room)).toBeUndefined();
    expect(await qrCode('9'.repeat(20_000), gridOf('203dpi'), { width: 600, height: 600 })).toBeUndefined();
  });
});
