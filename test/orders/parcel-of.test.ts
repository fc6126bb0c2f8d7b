import { describe, expect, it } from 'vitest';
import { foldedLine } from '../../src/orders/fold.js';
import { parcelOf } from '../../src/orders/parcel-of.js';

const said = (...lines: readonly string[]): string => {
  const found = parcelOf(lines.map(foldedLine));
  return found ? `${found.number} of ${found.of}` : '';
};

describe('which of how many parcels a label says that it is', () => {
  it.each([
    ['PARCEL 1 OF 2', '1 of 2'],
    ['Package: 2 of 3', '2 of 3'],
    ['PKG 1/2', '1 of 2'],
    ['Pieces 2/2   4.1 kg', '2 of 2'],
    ['Paket Nr. 1 von 2', '1 of 2'],
    ['Colis 2 sur 3', '2 of 3'],
    ['Bulto 1 de 4', '1 of 4'],
    ['Место 1 из 2', '1 of 2'],
    ['0.4 KG 1 OF 1', '1 of 1'],
    ['12 OF 12', '12 of 12'],
  ])('%s', (line, number) => expect(said('Ship to', line, 'Sampleton')).toBe(number));

  it.each([
    'Page 1 of 2',
    'Copy 1 of 3',
    'Label 1 of 2',
    '1/2',
    'Zone 4/7',
    'Parcel 3 of 2',
    'Parcel 0 of 2',
    'Parcel 1 of 200',
    'Parcel no. 1234 of 2026',
    'Box 1/2/2026',
    'Subparcel 1/2',
    'Unit 1 of 2 Example Street',
    'Parcel',
    '',
  ])('is not told by: %s', (line) => expect(said(line)).toBe(''));

  it('is unknown where two lines say different things', () => {
    expect(said('Parcel 1 of 2', '1 of 2')).toBe('1 of 2');
    expect(said('Parcel 1 of 2', 'Parcel 2 of 2')).toBe('');
  });
});
