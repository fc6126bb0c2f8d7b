import { describe, expect, it } from 'vitest';
import { isOnlyReturn, isReturnTitle } from '../../src/locating/return-title.js';
import { RETURN, RETURN_LABEL } from '../../src/locating/return-words.js';
import { folded } from '../../src/locating/vocabulary.js';

describe('isReturnTitle', () => {
  it.each(RETURN_LABEL)('takes a name that nothing else has in any type: %s', (words) => {
    expect(isReturnTitle(words, words, false)).toBe(true);
  });

  it.each(RETURN)('takes a word that may be a section only as a title: %s', (words) => {
    expect(isReturnTitle(words, words, true)).toBe(true);
    expect(isReturnTitle(words, words, false)).toBe(false);
  });

  it('takes capitals for a title, but not the English word, which stands in endorsements', () => {
    expect(isReturnTitle('retour', 'RETOUR', false)).toBe(true);
    expect(isReturnTitle('zwrot', 'ZWROT', false)).toBe(true);
    expect(isReturnTitle('return', 'RETURN', false)).toBe(false);
    expect(isReturnTitle('return', 'RETURN', true)).toBe(true);
  });

  it('takes a title in several languages, or about an order', () => {
    expect(isReturnTitle('retour', 'Retour / Retoure / Return label', true)).toBe(true);
    expect(isReturnTitle('retoure', 'Retoure: Bestellung 4711', true)).toBe(true);
    expect(isReturnTitle('retour', 'RETOUR 8184-0440', false)).toBe(true);
  });

  it.each([
    ['return service', 'RETURN SERVICE REQUESTED'],
    ['return', 'RETURN TO'],
    ['return label', 'Return label enclosed'],
    ['retour', 'RETOUR A L’EXPEDITEUR'],
    ['retour', 'RETOUR À L’EXPÉDITEUR'],
    ['retour', 'Retour naar afzender'],
    ['retoure', 'Retoure binnen 14 dagen'],
    ['rucksendung', 'Rücksendung bei Unzustellbarkeit'],
    ['rucksendung', 'Rücksendung der Ware'],
    ['zwrot', 'ZWROT DO NADAWCY'],
    ['devolucion', 'DEVOLUCIÓN AL REMITENTE'],
    ['return label', 'If undelivered use the return label'],
  ])('does not take %s in "%s"', (words, text) => {
    expect(isReturnTitle(words, text, true)).toBe(false);
  });
});

describe('isOnlyReturn', () => {
  it('is a line that says nothing else', () => {
    expect(isOnlyReturn('Retour / Retoure')).toBe(true);
    expect(isOnlyReturn('Retour 12')).toBe(true);
    expect(isOnlyReturn('12')).toBe(false);
    expect(isOnlyReturn('Retour sous 14 jours')).toBe(false);
  });

  it('knows each word of the lists', () => {
    expect([...RETURN, ...RETURN_LABEL].filter((words) => !isOnlyReturn(words) || folded(words) !== words)).toEqual([]);
  });
});
