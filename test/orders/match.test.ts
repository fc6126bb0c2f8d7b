import { describe, expect, it } from 'vitest';
import type { LabelFacts } from '../../src/orders/label-facts.js';
import type { MatchOptions } from '../../src/orders/matching.js';
import type { Order } from '../../src/orders/order.js';
import { addressed, endOf, label, match, order, rules } from './make.js';

const TRACKING = '9400111206206406260787';
const OTHER = '9400111201080805483016';

/** The end of the label `l`. */
const end = (orders: readonly Order[], labels: LabelFacts | readonly LabelFacts[], options?: MatchOptions): string =>
  endOf(match(orders, [labels].flat(), options), 'l');
/** What `reasons[0]` of the label says. */
function reason(orders: readonly Order[], labels: readonly LabelFacts[], id = 'l'): string {
  const held = match(orders, labels).labels.find((each) => each.label === id);
  return held?.kind === 'held' ? (held.reasons[0]?.message ?? '') : '';
}

describe('a label is matched', () => {
  const A = order('A-1001', { tracking: [TRACKING] });
  const B = order('A-1002', { buyer: 'Bertil Trialby', postcode: '80331' });

  it.each([
    ['the number alone', TRACKING],
    ['with spaces', '9400 1112 0620 6406 2607 87'],
    ['behind 420 and five digits of a postcode', `420101159400111206206406260787`],
    ['behind 420 and the postcode, with the separator', `42010115\x1d${TRACKING}`],
    ['behind 420 and nine digits', `420101151234${TRACKING}`],
    ['in a web address', `https://tidewick.example/t?n=${TRACKING}&l=en`],
  ])('by its tracking number: %s', (_, text) => {
    expect(end([A, B], label('l', { codes: [{ text, tracking: undefined }] }))).toBe('packed 0:A-1001 by tracking');
  });

  it('by an SSCC with or without its identifier', () => {
    const sscc = order('A-1', { tracking: ['395123451234567895'] });
    expect(end([sscc], label('l', { tracking: '00395123451234567895' }))).toBe('packed 0:A-1 by tracking');
    const long = order('A-1', { tracking: ['00395123451234567895'] });
    expect(end([long], label('l', { codes: [{ text: '00395123451234567895', tracking: undefined }] }))).toBe('packed 0:A-1 by tracking');
  });

  it('by its order number, printed or in a code', () => {
    expect(end([A, B], label('l', { lines: ['Kilnrow A-1002'] }))).toBe('packed 0:A-1002 by order-number');
    expect(end([A, B], label('l', { codes: [{ text: 'A-1002', tracking: undefined }] }))).toBe('packed 0:A-1002 by order-number');
  });

  it('by the name of its file', () => {
    expect(end([A, B], label('l', { fileName: 'label_A-1002.pdf' }))).toBe('packed 0:A-1002 by file-name');
  });

  it('by postcode and name', () => {
    expect(end([A, B], label('l', { lines: addressed(B) }))).toBe('packed 0:A-1002 by address');
  });

  it('and says which other clues say the same', () => {
    const l = label('l', { tracking: TRACKING, lines: ['Order A-1001'], fileName: 'A-1001.pdf' });
    expect(end([A, B], l)).toBe('packed 0:A-1001 by tracking, order-number, file-name');
  });

  it('not by half a clue: a tracking number within a longer one, a postcode or a name alone', () => {
    expect(end([A], label('l', { codes: [{ text: `X${TRACKING}`, tracking: undefined }] }))).toBe('held : orders/no-order');
    expect(end([A], label('l', { codes: [{ text: `${TRACKING}5`, tracking: undefined }] }))).toBe('held : orders/no-order');
    expect(end([B], label('l', { lines: ['Bertil Trialby', '80335 Sampleton'] }))).toBe('held : orders/no-order');
    expect(end([B], label('l', { lines: ['Bertil Exempelius', '80331 Sampleton'] }))).toBe('held : orders/no-order');
  });

  it('not by address when its tracking number is none of those that the order knows', () => {
    expect(end([A], label('l', { tracking: OTHER, lines: addressed(A) }))).toBe('held : orders/no-order');
  });

  it('only with orders of its own channel', () => {
    const far = order('A-1001', { channel: 1 });
    expect(end([far], label('l', { lines: ['Order A-1001', ...addressed(far)] }))).toBe('held : orders/no-order');
  });
});

describe('a label is held, not guessed', () => {
  const A = order('A-1001', { tracking: [TRACKING] });
  const B = order('A-1002', { buyer: 'Bertil Trialby', postcode: '80331', tracking: [OTHER] });

  it('for two orders by one clue', () => {
    expect(end([A, B], label('l', { lines: ['A-1001', 'A-1002'] }))).toBe('held 0:A-1001 0:A-1002: orders/two-orders');
    expect(end([A, B], label('l', { fileName: 'A-1001 A-1002.pdf' }))).toBe('held 0:A-1001 0:A-1002: orders/two-orders');
    const again = order('A-1003', { tracking: [] });
    expect(end([order('A-1001'), again], label('l', { lines: addressed(again) }))).toBe('held 0:A-1001 0:A-1003: orders/two-orders');
    const codes = [TRACKING, OTHER].map((text) => ({ text, tracking: text }));
    expect(end([A, B], label('l', { codes }))).toBe('held 0:A-1001 0:A-1002: orders/two-orders');
  });

  it('when a weaker clue is specific, too, and says something else', () => {
    expect(end([A, B], label('l', { tracking: TRACKING, lines: ['A-1002'] }))).toBe('held 0:A-1001 0:A-1002: orders/clues-differ');
    expect(end([A, B], label('l', { tracking: TRACKING, fileName: 'A-1002.pdf' }))).toBe('held 0:A-1001 0:A-1002: orders/clues-differ');
    expect(end([A, B], label('l', { lines: ['A-1001'], fileName: 'A-1002.pdf' }))).toBe('held 0:A-1001 0:A-1002: orders/clues-differ');
    expect(reason([A, B], [label('l', { tracking: TRACKING, lines: ['A-1002'] })])).toBe(
      'by its tracking number it is for order A-1001, by its order number on it for order A-1002',
    );
  });

  it('but not for a weaker clue that names several, or a file of many labels named after one', () => {
    const C = order('A-1003', { buyer: 'Maro Proberton' });
    expect(end([A, B, C], label('l', { tracking: TRACKING, lines: ['A-1002 A-1003'] }))).toBe('packed 0:A-1001 by tracking');
    const file = { fileName: 'A-1001.pdf' };
    const labels = [label('k', { tracking: TRACKING, ...file }), label('l', { tracking: OTHER, ...file })];
    expect(end([A, B], labels)).toBe('packed 0:A-1002 by tracking');
  });

  it('when its tracking number is known to orders that do not go together', () => {
    const thief = order('A-1004', { buyer: 'Maro Proberton', tracking: [TRACKING] });
    expect(end([A, thief], label('l', { tracking: TRACKING }))).toBe('held 0:A-1001 0:A-1004: orders/shared-tracking');
    expect(reason([A, thief], [label('l', { tracking: TRACKING })])).toContain('(…0787)');
  });

  it('when its tracking number is that of another channel', () => {
    const far = order('K-7001', { channel: 1, tracking: [TRACKING] });
    expect(end([far, B], label('l', { tracking: TRACKING }))).toBe('held 1:K-7001: orders/other-channel');
  });

  it.each([
    ['cancelled', 'orders/cancelled'],
    ['refunded', 'orders/refunded'],
    ['shipped', 'orders/already-shipped'],
    ['pick-up', 'orders/pick-up'],
    ['digital', 'orders/digital'],
  ] as const)('when its order is %s', (state, code) => {
    expect(end([order('A-1001', { state })], label('l', { lines: ['A-1001'] }))).toBe(`held 0:A-1001: ${code}`);
  });

  it('when name and postcode on it are not those of its order', () => {
    const lines = ['Order A-1001', ...addressed({ buyer: 'Jory Specimensen', address: ['5 Test Bend', 'Probeville'], postcode: '20095' })];
    expect(end([A], label('l', { lines }))).toBe('held 0:A-1001: orders/address-differs');
    expect(reason([A], [label('l', { lines })])).toBe('name and postcode on it are not those of order A-1001');
  });

  it('when it shows name and postcode of another order of the same town', () => {
    const neighbour = order('A-1009', { buyer: 'Jory Specimensen' });
    expect(end([A, neighbour], label('l', { tracking: TRACKING, lines: addressed(neighbour) }))).toBe(
      'held 0:A-1001: orders/address-differs',
    );
  });

  it('but not when only one of the two differs, or they are not to be read', () => {
    const moved = addressed({ ...A, postcode: '20095' });
    expect(end([A], label('l', { tracking: TRACKING, lines: moved }))).toBe('packed 0:A-1001 by tracking');
    const gift = addressed({ ...A, buyer: 'Jory Specimensen' });
    expect(end([A], label('l', { tracking: TRACKING, lines: gift }))).toBe('packed 0:A-1001 by tracking');
    const sender = ['From: Wobblethorn Studio', '1 Sample Lane', '99999 Trialford'];
    expect(end([A], label('l', { tracking: TRACKING, lines: sender }))).toBe('packed 0:A-1001 by tracking');
    const nameless = ['PARCEL 1 OF 1', '20095'];
    expect(end([A], label('l', { tracking: TRACKING, lines: nameless }))).toBe('packed 0:A-1001 by tracking');
  });

  it('nor for the address of a sender whom nobody named, on many labels', () => {
    const numbers = ['A-1', 'A-2', 'A-3', 'A-4'];
    const orders = numbers.map((number, at) => order(number, { buyer: `Odile Exempelius${at}`, postcode: `2000${at}` }));
    const labels = numbers.map((number) =>
      label(number, { lines: [`Order ${number}`, 'Wobblethorn Pots', '3 Sample Lane', '55116 Trialford'] }),
    );
    const { labels: ends } = match(orders, labels);
    expect(ends.map(({ kind }) => kind)).toEqual(['packed', 'packed', 'packed', 'packed']);
  });

  it('when it is older than the channel takes', () => {
    const dated = (date: string) => label('l', { tracking: TRACKING, lines: [`Ship date: ${date}`] });
    expect(end([A], dated('2026-11-13'))).toBe('held 0:A-1001: orders/too-old');
    expect(end([A], dated('2026-11-14'))).toBe('packed 0:A-1001 by tracking');
    expect(end([A], dated('2026-12-01'))).toBe('packed 0:A-1001 by tracking');
    expect(end([A], dated('2020-01-01'), rules({ maxAge: undefined }))).toBe('packed 0:A-1001 by tracking');
    expect(reason([A], [dated('2026-11-01')])).toBe('it is dated 2026-11-01, 27 days ago; this channel takes labels up to 14 days old');
  });

  it('when its order number is there twice and not alike, with the places of all', () => {
    const A = order('A-1001', { tracking: [TRACKING], differsAt: [{ file: 'more.csv', line: 3 }] });
    expect(end([A], label('l', { lines: ['A-1001'] }))).toBe('held 0:A-1001: orders/same-number');
    expect(end([A], label('l', { tracking: TRACKING }))).toBe('held 0:A-1001: orders/same-number');
    expect(reason([A], [label('l', { lines: ['A-1001'] })])).toBe(
      'order A-1001 is there more than once, and not alike (orders.csv, line 2 and more.csv, line 3)',
    );
  });

  it('when it says that it is one of other parcels than its order has, or the same parcel as another label', () => {
    const labels = (...words: readonly string[]) =>
      words.map((line, at) => label(`l${at}`, { lines: [`Order A-1001`, line], codes: [{ text: `T${at}`, tracking: `T${at}0000000` }] }));
    const ends = (parcels: number, ...words: readonly string[]) =>
      match([order('A-1001', { parcels })], labels(...words)).labels.map((each) =>
        each.kind === 'held' ? each.reasons[0]?.code : each.kind,
      );
    expect(ends(2, 'Parcel 1 of 2', 'Parcel 2 of 2')).toEqual(['packed', 'packed']);
    const numbers = (...words: readonly string[]) =>
      match([order('A-1001', { parcels: 2 })], labels(...words)).parcels.map(({ number, of }) => `${number} of ${of}`);
    expect(numbers('Parcel 2 of 2', 'Parcel 1 of 2')).toEqual(['2 of 2', '1 of 2']);
    expect(numbers('Parcel 2 of 2', 'no such words')).toEqual(['1 of 2', '2 of 2']);
    expect(numbers('1 of 1', '1 of 1')).toEqual(['1 of 2', '2 of 2']);
    expect(ends(2, '1 of 1', '1 of 1')).toEqual(['packed', 'packed']);
    expect(ends(2, 'Parcel 1 of 2', 'no such words')).toEqual(['packed', 'packed']);
    expect(ends(1, 'Parcel 1 of 2')).toEqual(['orders/parcel-of']);
    expect(ends(2, 'Parcel 1 of 3', 'Parcel 2 of 3')).toEqual(['orders/parcel-of', 'orders/parcel-of']);
    expect(ends(2, 'Parcel 1 of 2', 'Parcel 1 of 2')).toEqual(['orders/parcel-of', 'orders/parcel-of']);
    expect(ends(2, 'Parcel 1 of 2', 'Parcel 2 of 3')).toEqual(['orders/held-with', 'orders/parcel-of']);
    expect(ends(1, 'Parcel 1 of 2', 'Parcel 2 of 2')).toEqual(['orders/two-labels', 'orders/two-labels']);
    expect(reason([order('A-1001')], [label('l', { lines: ['Order A-1001', 'Parcel 1 of 2'] })])).toBe(
      'it says that it is one of 2 parcels, but order A-1001 goes in one',
    );
  });

  it('for every reason that there is', () => {
    const cancelled = order('A-1001', { state: 'cancelled' });
    const lines = [
      'Order A-1001',
      'Date: 2026-01-02',
      ...addressed({ buyer: 'Jory Specimensen', address: ['Probeville'], postcode: '20095' }),
    ];
    expect(end([cancelled], label('l', { lines }))).toBe('held 0:A-1001: orders/cancelled orders/address-differs orders/too-old');
  });
});

describe('parcels are counted', () => {
  const one = order('A-1001');
  const two = order('A-1002', { parcels: 2 });
  const numbered = (number: string, ...ids: readonly string[]) => ids.map((id) => label(id, { lines: [`Order ${number}`] }));

  it('two labels for one parcel: both held', () => {
    const matching = match([one], numbered('A-1001', 'k', 'l'));
    expect([endOf(matching, 'k'), endOf(matching, 'l')]).toEqual(['held 0:A-1001: orders/two-labels', 'held 0:A-1001: orders/two-labels']);
    expect(reason([one], numbered('A-1001', 'k', 'l'))).toBe('2 labels for order A-1001, which goes in one parcel');
  });

  it('as many as stated, or as there are tracking numbers', () => {
    expect(match([two], numbered('A-1002', 'k', 'l')).parcels).toMatchObject([
      { label: 'k', number: 1, of: 2 },
      { label: 'l', number: 2, of: 2 },
    ]);
    const tracked = order('A-1003', { tracking: [TRACKING, OTHER] });
    const labels = [label('k', { tracking: TRACKING }), label('l', { tracking: OTHER })];
    expect(match([tracked], labels).parcels.map(({ label: id, orders }) => [id, orders])).toEqual([
      ['k', ['0:A-1003']],
      ['l', ['0:A-1003']],
    ]);
  });

  it('fewer or more than stated: all held', () => {
    expect(end([two], numbered('A-1002', 'l'))).toBe('held 0:A-1002: orders/fewer-labels');
    expect(end([two], numbered('A-1002', 'j', 'k', 'l'))).toBe('held 0:A-1002: orders/more-labels');
    expect(reason([two], numbered('A-1002', 'l'))).toBe('1 label for order A-1002, which states 2 parcels');
  });

  it('the same tracking number on two labels', () => {
    const tracked = order('A-1003', { tracking: [TRACKING] });
    const labels = [label('k', { tracking: TRACKING }), label('l', { codes: [{ text: `42010115${TRACKING}`, tracking: undefined }] })];
    expect(end([tracked], labels)).toBe('held 0:A-1003: orders/label-twice');
    expect(reason([tracked], labels)).toBe('its tracking number (…0787) is on inbox/k.pdf, page 1, too');
  });

  it('with a held label all of its order are held', () => {
    const labels = [label('k', { lines: ['Order A-1002', 'Ship date 2026-01-02'] }), label('l', { lines: ['Order A-1002'] })];
    expect(end([two], labels)).toBe('held 0:A-1002: orders/held-with');
    expect(reason([two], labels)).toBe('held with inbox/k.pdf, page 1, which is for the same order (A-1002)');
  });
});

describe('orders that go in one parcel', () => {
  const A = order('A-1001', { together: ['A-1002'] });
  const B = order('A-1002', { buyer: 'Bertil Trialby', postcode: '80331' });

  it('as one of them states', () => {
    expect(end([A, B], label('l', { lines: ['A-1002'] }))).toBe('packed 0:A-1001 0:A-1002 by order-number');
    expect(end([A, B], label('l', { lines: ['A-1001', 'A-1002'] }))).toBe('packed 0:A-1001 0:A-1002 by order-number');
    expect(match([A, B], [label('l', { lines: ['A-1001'] })]).parcels).toMatchObject([{ number: 1, of: 1 }]);
  });

  it('as the same tracking number with the same buyer and address says', () => {
    const orders = ['A-1001', 'A-1002'].map((number) => order(number, { tracking: [TRACKING] }));
    expect(end(orders, label('l', { tracking: TRACKING }))).toBe('packed 0:A-1001 0:A-1002 by tracking');
  });

  it('held when one of them could not be read whole', () => {
    expect(end([A, { ...B, incomplete: true }], label('l', { lines: ['A-1001'] }))).toBe('held 0:A-1001 0:A-1002: orders/incomplete');
  });

  it('held when one of them is cancelled', () => {
    expect(end([A, { ...B, state: 'cancelled' }], label('l', { lines: ['A-1001'] }))).toBe('held 0:A-1001 0:A-1002: orders/cancelled');
  });

  it('each in the parcels whose tracking numbers it knows', () => {
    const orders = [order('A-1001', { tracking: [TRACKING] }), order('A-1002', { tracking: [TRACKING, OTHER] })];
    const matching = match(orders, [label('k', { tracking: TRACKING }), label('l', { tracking: OTHER })]);
    expect([endOf(matching, 'k'), endOf(matching, 'l')]).toEqual(['packed 0:A-1001 0:A-1002 by tracking', 'packed 0:A-1002 by tracking']);
  });
});

describe('labels without an order', () => {
  const stray = label('l', { tracking: TRACKING });

  it('are held or printed as their channel says', () => {
    expect(end([order('A-1001')], stray)).toBe('held : orders/no-order');
    expect(end([order('A-1001')], stray, rules({ withoutOrder: 'print' }))).toBe('without-order');
  });

  it('are held all the same when they are too old', () => {
    const old = { ...stray, lines: ['Mailed: 2 January 2026'] };
    expect(end([], old, rules({ withoutOrder: 'print' }))).toBe('held : orders/too-old');
  });

  it('of a channel without order files are untouched, whatever they say', () => {
    const A = order('A-1001', { channel: 1, tracking: [TRACKING] });
    expect(end([A], { ...stray, lines: ['Date 2026-01-02'] }, rules({ hasOrders: false }, {}))).toBe('untouched');
    expect(end([A], { ...stray, channel: 7 })).toBe('untouched');
  });
});

describe('bad input', () => {
  it('is no clue and throws nothing', () => {
    const empty = order('', { buyer: '', postcode: '', tracking: ['', '-', 'n/a', '12'], together: ['', 'A-1'], parcels: 1 });
    const odd = label('l', { fileName: '', codes: [{ text: '', tracking: '' }], lines: ['', '\u0000', '12', '\ud800'] });
    expect(
      end([empty, { ...empty, id: '0:2' }], odd, {
        channels: [{ hasOrders: true, withoutOrder: 'hold', maxAge: 1, fileName: '{order}' }],
        today: 'soon',
        ownAddress: [''],
      }),
    ).toBe('held : orders/no-order');
  });
});
