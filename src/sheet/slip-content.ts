/** One line of a packing slip. Any script, any length; empty where there is nothing. */
export interface SlipItem {
  readonly quantity: number;
  readonly sku: string;
  readonly description: string;
  readonly variant: string;
  /** Printed only when the slip shows prices. */
  readonly price: string;
}

/** What a packing slip made from an order says; plain data, so that it crosses threads. */
export interface SlipContent {
  readonly studio: string;
  /** Lines below the studio's name: address, telephone, e-mail. */
  readonly contact: readonly string[];
  readonly orderNumber: string;
  /** As it is to be printed; empty: none. */
  readonly date: string;
  /** Name and address, one line each. */
  readonly shipTo: readonly string[];
  readonly items: readonly SlipItem[];
  /** Which parcel of the order it is, from 1, and of how many. */
  readonly parcel: { readonly number: number; readonly of: number };
  readonly giftMessage: string;
  readonly notes: string;
  /** Numbers of other orders in the same parcel. */
  readonly together: readonly string[];
}

/** How slips look: a small set of options, for the whole pipeline or a channel. */
export interface SlipLook {
  /** Prices are shown only when asked. */
  readonly prices: boolean;
  /** As a gift: no prices, no notes. */
  readonly gift: boolean;
  /** Which code of the order number stands on it, for the scanner at the bench. */
  readonly code: 'code128' | 'qr' | 'none';
  /** Smallest type, pt. */
  readonly readable: number;
  /** Clear border, pt. */
  readonly margin: number;
}
