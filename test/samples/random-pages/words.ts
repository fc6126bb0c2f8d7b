import type { CodeArt } from '../code-art.js';
import { aztec, code128, code39, dataMatrix, gs1Code128, itf, pdf417, qr } from '../code-art.js';
import { CARRIERS, spaced } from '../foreign/designs/content.js';
import { ALL_LATIN, posted, type Posted } from '../foreign/designs/third-words.js';
import type { Choices } from './choices.js';

export interface Matter extends Posted {
  readonly carrier: string;
  readonly tracking: CodeArt;
  /** As people read it. */
  readonly number: string;
  /** Which way the number is made. */
  readonly scheme: string;
}

/** One parcel: its words, and the number it is tracked by. */
export function matter(pick: Choices): Matter {
  const language = pick.chance(0.5) ? 0 : pick.between(0, ALL_LATIN - 1);
  const told = posted(pick.between(1, 1e6), language);
  const { parcel } = told;
  const carrier = pick.of(CARRIERS);
  const scheme = pick.kept('number', { gs1: 5, sscc: 2, s10: 3, letters: 4, digits: 3, itf: 2, code39: 1 });
  const serial = pick.digits(18);
  const short = `${carrier.slice(0, 2).toUpperCase()}${serial.slice(0, 12)}`;
  const made = ((): readonly [CodeArt, string] => {
    switch (scheme) {
      case 'gs1':
        return [gs1Code128(['420', parcel.postcode], ['92', serial]), spaced(`92${serial}`)];
      case 'sscc':
        return [gs1Code128(['00', parcel.sscc]), `(00) ${parcel.sscc}`];
      case 's10':
        return [code128(parcel.s10), `${parcel.s10.slice(0, 2)} ${spaced(parcel.s10.slice(2, 11), 3)} ${parcel.s10.slice(11)}`];
      case 'letters':
        return [code128(short), spaced(short)];
      case 'digits':
        return [code128(serial.slice(0, 14)), spaced(serial.slice(0, 14))];
      case 'itf':
        return [itf(serial.slice(0, 14)), spaced(serial.slice(0, 14), 2)];
      case 'code39':
        return [code39(short.slice(0, 10)), short.slice(0, 10)];
    }
  })();
  return { ...told, carrier, scheme, tracking: made[0], number: made[1] };
}

/** A square code (or a stacked one) beside the addresses, with what it is called. */
export function squareCode(pick: Choices, { parcel, carrier }: Matter): { readonly art: CodeArt; readonly name: string } {
  const data = `${carrier.slice(0, 2).toUpperCase()}|${parcel.tracking}|${parcel.postcode}|${parcel.order}`;
  const name = pick.weighed({ datamatrix: 4, qr: 3, aztec: 2, pdf417: 2 });
  return {
    name,
    art:
      name === 'datamatrix' ? dataMatrix(data) : name === 'qr' ? qr(data) : name === 'aztec' ? aztec(data) : pdf417(data.slice(0, 26), 2),
  };
}

/** A short linear code that says where to sort to. */
export const routingCode = (pick: Choices, { parcel }: Matter): CodeArt =>
  pick.chance(0.5) ? itf(parcel.routing) : code128(`${parcel.depot}${parcel.routing.slice(0, 6)}`);
