import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldedLine } from '../../src/orders/fold.js';
import { holdsName, isAlike, likenessKeys, nameLine, personName } from '../../src/orders/person-name.js';

function holds(line: string, name: string): boolean {
  const person = personName(name);
  return person !== undefined && holdsName(nameLine(foldedLine(line)), person);
}

describe('a name on a label', () => {
  it.each([
    ['Odile Samplewright', 'Odile Samplewright'],
    ['SAMPLEWRIGHT, ODILE', 'Odile Samplewright'],
    ['Mrs. Odile Samplewright c/o Trialby', 'Odile Samplewright'],
    ['Odile Samplewrigth', 'Odile Samplewright'],
    ['Odil Samplewright', 'Odile Samplewright'],
    ['O. Samplewright', 'Odile Samplewright'],
    ['P. Trialby', 'Peregrin Trialby'],
    ['Odile S.', 'Odile Samplewright'],
    ['Odile Samplewright', 'Odile M. Samplewright'],
    ['Odile Samplewright', 'Odile Marie Samplewright'],
    ['Zsofi Mustermöör', 'Zsófi Mustermoor'],
    ['Jorg Mueller-Mustermoor', 'Jörg Müller-Mustermoor'],
    ['STRASSER BERTIL', 'Bertil Straßer'],
    ['Soren Proberton', 'Søren Proberton'],
    ['van der Mustermoor', 'Vandermustermoor'],
    ['Maro', 'Maro'],
    ['Ship to: Maro', 'Maro'],
    ['ΟΔΥΣΣΕΑΣ ΔΕΙΓΜΑΤΗΣ', 'Οδυσσέας Δειγματής'],
    ['Одиль Образцова', 'ОДИЛЬ ОБРАЗЦОВА'],
    ['見本太郎 様', '見本 太郎'],
    ['お届け先 見本太郎様', '見本太郎'],
    ['견본 철수님', '견본철수'],
    ['أوديل عينة', 'اوديل عينه'],
    ['אודיל דוגמה', 'אוֹדיל דוגמה'],
    ['ตัวอย่าง โอดีล', 'ตัวอย่าง โอดีล'],
    ['ओडिल नमूना', 'ओडिल नमूना'],
  ])('%s is %s', (line, name) => expect(holds(line, name)).toBe(true));

  it.each([
    ['Odile Trialby', 'Odile Samplewright'],
    ['Samplewright', 'Odile Samplewright'],
    ['Odile Sampelwrigth', 'Odile Samplewright'],
    ['Bertil Samplewright', 'Odile Samplewright'],
    ['Maro Proberton', 'Maro'],
    ['O. S.', 'Odile Samplewright'],
    ['B. Samplewright', 'Odile Samplewright'],
    ['Mary', 'Maro Proberton'],
    ['Jon Samplewright', 'Jan Samplewright'],
    ['見本次郎', '見本太郎'],
    ['राम नमूना', 'रमा नमूना'],
    ['', 'Odile Samplewright'],
    ['Odile Samplewright', ''],
    ['12', '12'],
  ])('%s is not %s', (line, name) => expect(holds(line, name)).toBe(false));
});

describe('alike', () => {
  const word = fc.string({ unit: fc.constantFrom('a', 'b', 'c', 'd'), minLength: 0, maxLength: 8 });

  it('is symmetric, holds for one edit, and alike parts share a key', () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(isAlike(a, b)).toBe(isAlike(b, a));
        if (isAlike(a, b)) expect(likenessKeys(a).some((key) => likenessKeys(b).includes(key))).toBe(true);
      }),
    );
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('a', 'b', 'c', 'd'), minLength: 5, maxLength: 9 }),
        fc.nat(),
        fc.constantFrom('x', 'y', 'z'),
        (a, n, letter) => {
          const at = n % (a.length - 1);
          expect(isAlike(a, a.slice(0, at) + a.slice(at + 1))).toBe(true);
          expect(isAlike(a, a.slice(0, at) + letter + a.slice(at + 1))).toBe(true);
          expect(isAlike(a, a.slice(0, at) + letter + a.slice(at))).toBe(true);
          expect(isAlike(a, a.slice(0, at) + (a[at + 1] ?? '') + (a[at] ?? '') + a.slice(at + 2))).toBe(true);
          expect(isAlike(a, `xy${a.slice(2)}z`)).toBe(false);
        },
      ),
    );
  });
});
