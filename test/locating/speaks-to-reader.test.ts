import { describe, expect, it } from 'vitest';
import { namesLabel, speaksToReader } from '../../src/locating/speaks-to-reader.js';

describe('speaksToReader', () => {
  it.each([
    'Your packet label / Votre étiquette de petit colis',
    'Here is your shipping label',
    'Ihr Versandetikett',
    'Je briefdoosje',
    'Cut along the dashed line',
    'Please print this page at 100 %',
    'Knip uit langs de stippellijn',
    'Hier abtrennen',
    'Para colar na caixa',
    'Recorte la etiqueta',
    'Pliez ici',
    'Wytnij etykietę',
    'Thistle & Tin - your shipping label',
  ])('hears it in "%s"', (text) => {
    expect(speaksToReader(text)).toBe(true);
  });

  it.each([
    'Your reference: 4711',
    'Ihr Zeichen: 55',
    'Print: 12.03.',
    'Print date 12.03.2026',
    'Your order from Thistle & Tin',
    'Ihr Zustelldepot',
    'Su Li',
    'Vos Logistiek',
    'Cole Example',
    'Fast Freight',
    'Print Works Sampleton',
    'Fragile, do not bend',
    'Leave with a neighbour',
  ])('does not in "%s"', (text) => {
    expect(speaksToReader(text)).toBe(false);
  });
});

describe('namesLabel', () => {
  it.each(['Thistle & Tin label', 'Etikett zu Auftrag 7', 'Order 10-4471, paid', 'Commande 22-4410'])('hears it in "%s"', (text) => {
    expect(namesLabel(text)).toBe(true);
  });

  it.each(['Thistle & Tin', 'Return label', 'Étiquette de retour', 'Label', 'Order lines'])('does not in "%s"', (text) => {
    expect(namesLabel(text)).toBe(false);
  });
});
