/**
 * Check digits of numbers that codes on labels carry. Each takes the characters before the check digit and gives the digit
 * (0 to 9), or undefined when the characters are none that the scheme knows. Nothing here alters or completes a number on a
 * label: it only says whether a number that was read is a whole one.
 */

/**
 * GS1 mod 10: weights 3, 1, 3 … from the right; (10 - sum mod 10) mod 10. GS1 check digit page (primary), handbook section 2.2.
 * SSCC, GTIN and GLN; also package numbers of USPS Publication 199 over the whole number without 420 and the postcode
 * (secondary, reproduces published numbers), and of 15- and 22-digit ground numbers over the digits that section 4.2 names.
 */
export function gs1CheckDigit(digits: string): number | undefined {
  if (!/^[0-9]+$/.test(digits)) return undefined;
  let sum = 0;
  for (let i = 0; i < digits.length; i++) sum += digitAt(digits, i) * ((digits.length - i) % 2 === 1 ? 3 : 1);
  return (10 - (sum % 10)) % 10;
}

/**
 * The scheme of 18-character numbers that begin with 1Z, over the 15 characters between: letters count (ASCII code - 3) mod
 * 10, even positions twice without summing the product's digits. Handbook section 4.1 (secondary).
 */
export function alphanumericCheckDigit(characters: string): number | undefined {
  if (!/^[0-9A-Z]{15}$/.test(characters)) return undefined;
  let sum = 0;
  for (let i = 0; i < characters.length; i++) {
    const code = characters.charCodeAt(i);
    const value = code >= 65 ? (code - 3) % 10 : code - 48;
    sum += value * (i % 2 === 1 ? 2 : 1);
  }
  return (10 - (sum % 10)) % 10;
}

/**
 * Weights 1, 3, 7 in turn from the right; sum mod 11 mod 10 (10 becomes 0). Over 11 digits for a 12-digit express
 * number, over 13 for positions 21 to 33 of a 34-digit one. Handbook section 4.2 (secondary).
 */
export function mod11CheckDigit(digits: string): number | undefined {
  if (!/^(?:[0-9]{11}|[0-9]{13})$/.test(digits)) return undefined;
  const weights = [1, 3, 7];
  let sum = 0;
  for (let i = 0; i < digits.length; i++) sum += digitAt(digits, i) * (weights[(digits.length - 1 - i) % 3] ?? 0);
  return (sum % 11) % 10;
}

/** UPU S10-12, the eight digits of `AA 123 456 78c BB`: weights 8 6 4 2 3 5 9 7; 11 - sum mod 11; 10 becomes 0, 11 becomes 5. Handbook section 4.3 (secondary). */
export function s10CheckDigit(serial: string): number | undefined {
  if (!/^[0-9]{8}$/.test(serial)) return undefined;
  const weights = [8, 6, 4, 2, 3, 5, 9, 7];
  let sum = 0;
  for (let i = 0; i < serial.length; i++) sum += digitAt(serial, i) * (weights[i] ?? 0);
  const check = 11 - (sum % 11);
  return check === 10 ? 0 : check === 11 ? 5 : check;
}

const digitAt = (digits: string, at: number): number => digits.charCodeAt(at) - 48;
