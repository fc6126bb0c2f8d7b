import { foreignPostcodes, holdsBuyer, holdsPostcode, postcodesOf } from './addresses.js';
import type { OrderIndex } from './order-index.js';
import type { ReadLabel } from './read-label.js';

/** A postcode on so many labels of a channel, and on half of them, is the sender's. */
const SENDERS = 3;

/** Compares labels with the addresses of their orders. */
export class AddressCheck {
  readonly #index: OrderIndex;
  readonly #labels: readonly ReadLabel[];
  readonly #own: ReadonlySet<string>;
  readonly #often = new Map<number, ReadonlySet<string>>();

  /** @param own the studio's own address lines */
  constructor(index: OrderIndex, labels: readonly ReadLabel[], own: readonly string[]) {
    this.#index = index;
    this.#labels = labels;
    this.#own = postcodesOf(own);
  }

  /**
   * Whether a label is addressed to somebody else than these orders. It is when neither of them has its buyer on the label, and the label shows
   * postcode and buyer of another order; or when it shows neither buyer nor postcode of any of them, but a name with another postcode
   * below it, in their country's form or surely in another's, that isn't the sender's. Only one of the two different, the address of an order in the same parcel, or nothing readable: no.
   */
  differs(label: ReadLabel, orders: readonly number[], bundle: readonly number[]): boolean {
    if (label.lines.length === 0) return false;
    const addressees = orders.map(this.#index.addressee);
    if (addressees.some((each) => holdsBuyer(label, each))) return false;
    const others = this.#index.addresses.get(label.facts.channel)?.onLabel(label) ?? [];
    if (others.some((order) => !bundle.includes(order)) && addressees.some(({ name }) => name !== undefined)) return true;
    // Orders stated to go together go to any of their addresses.
    if (others.length > 0) return false;
    if (addressees.some((each) => holdsPostcode(label, each) || each.postcode === '' || !each.name)) return false;
    return addressees.some(({ postcode }) => {
      const foreign = foreignPostcodes(label, postcode, this.#own);
      if (foreign.length === 0) return false;
      const often = this.#oftenIn(label.facts.channel);
      return foreign.some((key) => !often.has(key));
    });
  }

  /** What most labels of a channel show: looked for only when a label is in doubt. */
  #oftenIn(channel: number): ReadonlySet<string> {
    const known = this.#often.get(channel);
    if (known) return known;
    const counts = new Map<string, number>();
    const labels = this.#labels.filter(({ facts }) => facts.channel === channel && facts.lines.length > 0);
    for (const label of labels) {
      for (const key of label.anyPostcode) counts.set(key, (counts.get(key) ?? 0) + 1);
      label.forget();
    }
    const often = new Set([...counts].filter(([, count]) => count >= SENDERS && count * 2 >= labels.length).map(([key]) => key));
    this.#often.set(channel, often);
    return often;
  }
}
