import { describe, expect, it } from 'vitest';
import { recipeFromText } from '../../src/config/recipe-from-text.js';
import { draftOrders } from '../../src/draft/draft-orders.js';
import type { OrderMap } from '../../src/orders/order-map.js';
import { readOrders } from '../../src/orders/read-orders.js';

const drafted = (text: string): string => {
  const { text: block, diagnostics } = draftOrders(Buffer.from(text), 'orders.csv');
  if (block === undefined) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  return block;
};

/** The map that a recipe with the drafted lines has. */
function mapOf(block: string): OrderMap {
  const { value, diagnostics } = recipeFromText(`about: Sample.\nsteps: [split-pages, locate-label, verify]\n${block}`, 'drafted.yaml');
  expect(diagnostics).toEqual([]);
  if (!value?.orders) throw new Error('no map');
  return value.orders;
}

const columnsOf = (text: string): OrderMap['columns'] => mapOf(drafted(text)).columns;

const ENGLISH =
  'Order number,Order date,Status,Shipping method,Recipient,Bill to name,Street 1,Street 2,Town,State,ZIP,Country,Item no.,Item,Colour,Pieces,Unit price,Is gift,Gift message,Tracking number,Buyer notes,Weight\n' +
  'MUG-1,25/04/2026,paid,local pickup,Ada Example,Bo Bill,1 Sample Street,,Springfield,MA,01101,US,M-1,Mug,blue,2,24.00,no,,9400111206206406260787,,0.4\n' +
  'MUG-2,03/05/2026,cancelled,standard,Eve Example,Bo Bill,2 Sample Street,Flat 3,Springfield,MA,01102,United States,P-2,Plate,,1,9.00,yes,Hello,,ring,0.4\n';

describe('the lines for an order file', () => {
  it('name the column of each field', () => {
    expect(columnsOf(ENGLISH)).toEqual({
      order: ['Order number'],
      'ordered-on': ['Order date'],
      state: ['Status'],
      fulfilment: ['Shipping method'],
      buyer: ['Recipient'],
      address: ['Street 1', 'Street 2', 'Town', 'State'],
      postcode: ['ZIP'],
      country: ['Country'],
      sku: ['Item no.'],
      description: ['Item'],
      variant: ['Colour'],
      quantity: ['Pieces'],
      price: ['Unit price'],
      gift: ['Is gift'],
      'gift-message': ['Gift message'],
      tracking: ['Tracking number'],
      notes: ['Buyer notes'],
    });
  });

  it('read the file without a remark, and say so', () => {
    const block = drafted(ENGLISH);
    expect(readOrders(Buffer.from(ENGLISH), 'orders.csv', mapOf(block), 0).diagnostics).toEqual([]);
    expect(block).toContain('# Read with it: 2 orders, 2 items, nothing to complain of.');
    expect(block).toContain('# Columns that are not used: "Bill to name", "Weight".');
    expect(block).not.toContain('Not sure');
    expect(block).not.toMatch(/Ada|Eve|Sample Street|9400111/);
  });

  it.each([
    [
      'German',
      'Bestellnummer;Bestelldatum;Vorname;Nachname;Straße;PLZ;Ort;Land;Artikelnummer;Artikel;Menge;Sendungsnummer\n',
      'Straße',
      'PLZ',
    ],
    [
      'French',
      'Commande;Date de commande;Prénom;Nom de famille;Rue;Code postal;Ville;Pays;Référence;Produit;Quantité;Numéro de suivi\n',
      'Rue',
      'Code postal',
    ],
    [
      'Spanish',
      'Pedido;Fecha;Nombre de pila;Apellidos;Dirección;Código postal;Ciudad;País;Referencia;Producto;Cantidad;Seguimiento\n',
      'Dirección',
      'Código postal',
    ],
    [
      'Italian',
      'Ordine;Data ordine;Nome di battesimo;Cognome;Indirizzo;CAP;Città;Paese;Codice articolo;Prodotto;Quantità;Tracciamento\n',
      'Indirizzo',
      'CAP',
    ],
  ])('are found by %s words', (_language, header, street, postcode) => {
    const postcodeFirst = header.indexOf(postcode) < header.indexOf(header.split(';')[6] ?? '');
    const row = `B-1;28.11.2026;Ada;Example;1 Sample Street;${postcodeFirst ? '01067;Dresden' : 'Dresden;01067'};DE;M-1;Mug;1;9400111206206406260787\n`;
    const columns = columnsOf(header + row);
    const names = header.trim().split(';');
    expect(columns.order).toEqual([names[0]]);
    expect(columns['ordered-on']).toEqual([names[1]]);
    expect(columns.buyer).toEqual([names[2], names[3]]);
    expect(columns.address?.[0]).toBe(street);
    expect(columns.postcode).toEqual([postcode]);
    expect([columns.country, columns.sku, columns.description, columns.quantity, columns.tracking].map((each) => each?.[0])).toEqual(
      names.slice(7),
    );
  });

  it('take the address of the parcel where the bill has one, too', () => {
    const columns = columnsOf(
      'Order,Billing name,Billing street,Billing ZIP,Shipping name,Shipping street,Shipping town,Shipping ZIP\nA-1,Bo,1 Bill Road,01101,Ada,2 Sample Street,Springfield,01102\n',
    );
    expect(columns).toMatchObject({ buyer: ['Shipping name'], address: ['Shipping street', 'Shipping town'], postcode: ['Shipping ZIP'] });
  });

  it('of JSON are paths of keys, with the list that holds the orders', () => {
    const order = {
      no: 'A-1',
      placed: { on: '2026-11-28' },
      shipTo: { name: 'Ada', street: '1 Sample Street', town: 'Springfield', zip: '01101' },
      goods: [{ sku: 'M-1', name: 'Mug' }],
    };
    const item = {
      ...order,
      number: 'A-1',
      items: [{ sku: 'M-1', name: 'Mug', qty: 2 }],
      parcels: [{ tracking: '9400111206206406260787' }],
    };
    const text = JSON.stringify({ page: 1, export: { list: [item] } });
    const map = mapOf(drafted(text));
    expect(map.list).toBe('export.list');
    expect(map.columns).toMatchObject({
      order: ['number'],
      buyer: ['shipTo.name'],
      address: ['shipTo.street', 'shipTo.town'],
      postcode: ['shipTo.zip'],
      description: ['items.name'],
      quantity: ['items.qty'],
      tracking: ['parcels.tracking'],
    });
    expect(readOrders(Buffer.from(text), 'orders.json', map, 0).orders).toMatchObject([
      { number: 'A-1', buyer: 'Ada', items: [{ quantity: 2 }] },
    ]);
  });
});

describe('what is not sure stands in comments', () => {
  it('the order of dates, unless one can be read in one way only', () => {
    const file = (...dates: readonly string[]): string =>
      `Order,Order date\n${dates.map((date, index) => `A-${index},${date}\n`).join('')}`;
    expect(mapOf(drafted(file('03/04/2026', '25/04/2026'))).dateOrder).toBe('day-month-year');
    expect(mapOf(drafted(file('03/04/2026', '04/25/2026'))).dateOrder).toBe('month-day-year');
    expect(mapOf(drafted(file('2026-04-03'))).dateOrder).toBeUndefined();
    const unknown = drafted(file('03/04/2026'));
    expect(mapOf(unknown).dateOrder).toBeUndefined();
    expect(unknown).toContain('  # date-order: month-day-year');
    expect(drafted(file('03/04/2026', '25/04/2026', '04/25/2026'))).toContain('contradict each other');
  });

  it('words of a status that nobody knows', () => {
    const block = drafted('Order,Status\nA-1,paid\nA-2,in the kiln\n');
    expect(block).toContain('  # states:\n  #   in the kiln: to-ship\n');
    const uncommented = block.replace('  # states:', '  states:').replace('  #   in the kiln', '    in the kiln');
    expect(mapOf(uncommented).states).toEqual({ 'in the kiln': 'to-ship' });
  });

  it('a number that only looks like one', () => {
    const block = drafted('Ref.,Recipient\nA-1001,Ada\nA-1002,Eve\n');
    expect(mapOf(block).columns.order).toEqual(['Ref.']);
    expect(block).toContain("    # Not sure: check this one.\n    order: 'Ref.'");
  });

  it('other columns that could be meant', () => {
    expect(drafted('Order number,Order ID,Recipient\nA-1,7001,Ada\nA-2,7002,Eve\n')).toContain('# This could be meant, too: "Order ID".');
  });

  it('names of any kind come through YAML', () => {
    for (const name of [`Ref: "it's" #1, [x]`, '- ref', '*', "'", 'yes', '7', 'null', '{a: b}', 'Réf. n°', '% & !']) {
      const file = `"${name.replaceAll('"', '""')}",Recipient\nA-1,Ada\nA-2,Eve\n`;
      expect(columnsOf(file).order, name).toEqual([name]);
    }
  });
});

describe('no lines', () => {
  it.each([
    ['draft/no-order-column', 'Colour,Shelf\nblue,left\nred,right\n'],
    ['draft/no-header', '1001,Ada,01101\n1002,Eve,01102\n'],
    ['orders/empty', ''],
    ['orders/binary', 'PK\u0003\u0004…'],
    ['orders/list', '{"orders": 5}'],
  ])('%s: %j', (code, text) => {
    const { text: block, diagnostics } = draftOrders(Buffer.from(text), 'orders.csv');
    expect(block).toBeUndefined();
    expect(diagnostics.map((each) => each.code)).toContain(code);
  });
});
