import { describe, expect, it } from 'vitest';
import { countsPage, isPagesLine, isSentence, namesLabel, speaksToReader } from '../../src/locating/speaks-to-reader.js';

/** Lines that are heard as what a function listens for, and lines that aren't. */
function hearing(hears: (text: string) => boolean, these: readonly string[], notThese: readonly string[]): void {
  describe(hears.name, () => {
    it.each(these)('hears it in "%s"', (text) => {
      expect(hears(text)).toBe(true);
    });

    it.each(notThese)('does not in "%s"', (text) => {
      expect(hears(text)).toBe(false);
    });
  });
}

hearing(
  speaksToReader,
  [
    'Imprimez `a 100 %. Collez l’´etiquette sur le colis.',
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
    'Thistle & Tin - please cut out',
    'Bring the parcel to any counter that shows the Larch Halt sign',
    'Geben Sie Ihr Paket am Schalter ab.',
    'Déposez votre colis avant midi',
    'Print at 100 %, fold the page along the middle and slide it into a pouch. Keep the code flat.',
  ],
  [
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
    'Leave parcel in porch',
    'Paket nicht stürzen',
  ],
);

hearing(
  isSentence,
  ['The refund follows within fourteen days.', 'Retours acceptés pendant 30 jours.', 'Observaciones: entregar por la mañana, gracias.'],
  ['Larch Halt EX1 2AB', 'Do not bend.', 'weight 2 kg, parcel 1 of 1.', 'SAMPLE - NOT VALID FOR CARRIAGE'],
);

hearing(
  isPagesLine,
  ['Thanks for your order', 'Merci Solène !', 'Postage $7.12', 'Porto 5,90 EUR', '24/11/2026 09:41', 'Cut along the line'],
  ['Larch Halt', '2.10 kg 24/11/2026', 'Ada Invented, 14 Sample Lane', 'Dankwart Muster'],
);

hearing(
  countsPage,
  ['Parcel 1 of 2 - order B-37677', 'Carton 1', 'Blatt 2 von 5', 'Sheet 2/5', 'Order 70451 - Larch & Halt', 'Larch Halt - order 7'],
  ['Paket 2 kg', 'Parcel Plus', 'Boxer 4', 'In order 7'],
);

hearing(
  namesLabel,
  ['Thistle & Tin label', 'Etikett zu Auftrag 7', 'Order 10-4471, paid', 'Commande 22-4410', 'Larch & Halt - order 704'],
  ['Thistle & Tin', 'Return label', 'Étiquette de retour', 'Label', 'Order lines'],
);
