import { afterAll, describe, expect, it } from 'vitest';
import { foreignFiles, HALVES, type Half } from './load.js';
import { emptyTally, sumOf, tallyOf, type Tally } from './tally.js';

/** What the search finds on one layout, and what else it makes of it. */
interface Figures {
  /** Labels with every edge within 1 mm and the right turn. */
  readonly found: number;
  /** Labels whose page is held instead. */
  readonly held?: number;
  /** Sheets taken for a label that are none, or not as it should be. */
  readonly wrong?: number;
  /** Pages without a label that are taken for one. */
  readonly mistaken?: number;
  /** Return labels, slips and customs forms told apart, where a layout has any. */
  readonly kinds?: string;
}

/**
 * `found` may only go up and `wrong` only down, and then they are put right here. The unseen half is for counting: whoever
 * works on the search doesn't look at its pages. The first time that it was counted, 156 of its 175 labels were found, 14 held and
 * 13 sheets wrong (u02 6 found, u03 13, u04 11, u07 8 wrong, u09 14, u10 12); what it counts since the search was changed after that
 * is no measure of pages that nobody has seen. The fresh part was made after that, without a look at the search: at first sight 151 of its 168 labels were
 * found, 8 held, 13 sheets wrong, 34 of 38 pages without a label kept. Then it was looked at, and labels that are found in part are filled out since.
 * The second-sight part is a later look with the same distance: at first sight 99 of its 147 labels were found, 44 held, 9 sheets wrong, 31 of 32 pages
 * without a label kept, 15 of 43 kinds told. So is the third-sight part, two thirds of it plain documents of the trade: at first sight 108 of its 128 labels were
 * found, 16 held, 7 sheets wrong (5 on a label, 2 vouchers), 35 of 37 pages without a label kept, 31 of 35 kinds told.
 * The fourth-sight part is plain documents alone: at first sight 140 of its 144 labels were found, 4 held, no sheet wrong, 47 of 47 pages without a label kept,
 * 37 of 38 kinds told. Its layouts x01 to x05 were drawn and counted after that: 39 of 42 found, 2 held, 1 skipped, 4 sheets wrong (receipts on label paper),
 * 14 of 18 pages without a label kept; y01 to y04 after those: 23 of 24 found, 1 held, and 6 of 22 papers without a label on label paper taken for labels.
 * The fifth-sight part is plain documents by yet other writers, most labels without a frame: at first sight z01 to z08 gave 56 of 64 found, 8 held, none wrong, 8 of 8 pages
 * without a label kept; z09 to z22 92 of 107 found, 10 held, 5 lost, 5 sheets wrong (three of them tickets), 55 of 58 kept; z23 to z28, drawn where those had shown what is hard,
 * 30 of 49 found, 12 held, 7 lost, 2 wrong, 6 of 6 kept; z29 and z30 15 of 16 found, 1 held, 12 of 12 kept. Codes of three designs were
 * given more clear paper after the first counts, and one more label was found.
 * The sixth-sight part, ordinary documents again, by writers that no other part has (the files that begin with j): at first sight j01 to j12 gave 25 of 36 found, 10 held, 1 lost,
 * 2 wrong, 17 of 18 pages without a label kept; j13 to j22 26 of 37 found, 10 held, 1 lost, 1 wrong, 16 of 16 kept; j23 to j25 7 of 8 found, 1 held, 2 of 2 kept. Lost and, but for
 * a customs form taken for a label, wrong are two labels on paper of their own, whose box is the ink and not the page; one of them is still there. The files that begin with n are the rest of the world and the
 * untidy: at first sight n01 to n11 gave 13 of 35 found, 20 held, 2 lost, 2 wrong, 10 of 10 kept; n12 to n23 26 of 36 found, 7 held, 3 lost, 3 wrong, 15 of 15 kept; n24 to n36 10 of 35
 * found, 23 held, 2 lost, 1 wrong, 15 of 15 kept; n37 to n45 3 of 20 found, 17 held, 3 wrong, 15 of 16 kept, and 10 found, 6 held, 4 lost, 6 wrong by the search after it had seen the others.
 * Three of these documents were taken out again, for names of real services stood on them; without them both together were 106 of 195: most had an address that was not known as one.
 * Of the 7 wrong now all print their label whole: three with a title that stands above it, three as all of their paper or as all of their ink, where the truth has the other, one with
 * its stub.
 * The seventh-sight part was drawn by another mind again, for the desk of an ordinary shop (the files that begin with r): at first sight r01 to r14 gave 31 of 39 found, 8 held,
 * none wrong, 16 of 16 pages without a label kept; r15 to r29 35 of 49 found, 11 held, 3 lost and wrong (unframed labels on long paper of their own, whose box is the ink), 15 of 15 kept;
 * r30 to r43 31 of 33 found, 2 held, 13 of 13 kept; r44 to r54 23 of 31 found, 8 held, 5 of 7 kept: a sheet to drop a parcel off with and a certificate were taken for labels.
 * r55 to r63 18 of 23 found, 5 held, 6 of 8 kept: another such sheet, and a paper about a pickup.
 * r64 to r69 14 of 14 found, 7 of 8 kept: a collection that is booked.
 * r70 to r72 5 of 6 found, 1 held, 10 of 12 kept: an order's details and a proof of a loan.
 */
const FIGURES: Readonly<Record<string, Figures>> = {
  't01-browser-slip': { found: 15, kinds: '15 of 15' },
  't02-folded-a4': { found: 15 },
  't03-sender-copy': { found: 15, kinds: '15 of 15' },
  't04-office-advert': { found: 15 },
  't05-label-pictures': { found: 15 },
  't06-several-pictures': { found: 37 },
  't07-typeset-letter': { found: 15 },
  't08-abroad': { found: 20, kinds: '10 of 10' },
  't09-scans': { found: 15 },
  't10-odd-pages': { found: 15 },
  't11-none': { found: 0, kinds: '8 of 9' },
  'u01-engine-note': { found: 15, kinds: '15 of 15' },
  'u02-cut-out': { found: 15 },
  'u03-lower-half': { found: 15, kinds: '15 of 15' },
  'u04-advert-first': { found: 15 },
  'u05-label-pixels': { found: 15 },
  'u06-pictures-placed': { found: 35 },
  'u07-office-all': { found: 15, kinds: '12 of 12' },
  'u08-way-back': { found: 20, kinds: '10 of 10' },
  'u09-scanned': { found: 15 },
  'u10-odd-sizes': { found: 15 },
  'u11-none': { found: 0, kinds: '7 of 9' },
  'f01-note-above': { found: 15, kinds: '15 of 15' },
  'f02-counter-sheet': { found: 15 },
  'f03-two-up': { found: 20, kinds: '10 of 10' },
  'f04-office-middle': { found: 15 },
  'f05-scans': { found: 15 },
  'f06-whole-pixels': { found: 16 },
  'f07-picture-in-words': { found: 15, kinds: '13 of 15' },
  'f08-far-away': { found: 24, kinds: '12 of 12' },
  'f09-letter-end': { found: 15 },
  'f10-label-paper': { found: 18 },
  'f11-none': { found: 0, kinds: '6 of 9' },
  's01-browser-print': { found: 8 },
  's02-half-scissors': { found: 8 },
  's03-above-invoice': { found: 8, kinds: '8 of 8' },
  's04-sheets': { found: 24, held: 2 },
  's05-way-back': { found: 8, kinds: '8 of 8' },
  's06-declared': { found: 8, kinds: '2 of 2' },
  's07-outlined': { found: 8 },
  's08-pick-beside': { found: 8, kinds: '8 of 8' },
  's09-on-colour': { found: 8 },
  's10-tiles': { found: 8, kinds: '8 of 8' },
  's11-shaded-scans': { found: 7 },
  's12-doc-tab': { found: 10 },
  's13-watermark': { found: 8 },
  's14-tear-off': { found: 8 },
  's15-there-and-back': { found: 16, kinds: '8 of 8' },
  's16-none': { found: 0, kinds: '9 of 9' },
  'v01-plain-page': { found: 9 },
  'v02-top-half': { found: 8 },
  'v03-quarter': { found: 8 },
  'v04-with-invoice': { found: 8 },
  'v05-photographed': { found: 7, held: 1 },
  'v06-picture-in-page': { found: 8 },
  'v07-a5-lying': { found: 8 },
  'v08-slip-above': { found: 8, kinds: '8 of 8' },
  'v09-return-page': { found: 8, kinds: '8 of 8' },
  'v10-two-per-sheet': { found: 11 },
  'v11-thermal-pictures': { found: 7, wrong: 1 },
  'v12-label-then-slip': { found: 6, kinds: '6 of 6' },
  'v13-peel-off': { found: 7, kinds: '4 of 4' },
  'v14-with-customs': { found: 8 },
  'v15-far-words': { found: 7 },
  'v16-odd-ones': { found: 8 },
  'v17-none': { found: 0, kinds: '9 of 9' },
  'w01-label-alone': { found: 10 },
  'w02-upper-half': { found: 8 },
  'w03-quarter': { found: 8 },
  'w04-slip-beside': { found: 8, kinds: '8 of 8' },
  'w05-label-and-record': { found: 8 },
  'w06-two-pictures': { found: 14 },
  'w07-flatbed': { found: 8 },
  'w08-picture-files': { found: 8 },
  'w09-picture-on-page': { found: 8 },
  'w10-small-pages': { found: 8 },
  'w11-a5-page': { found: 8 },
  'w12-then-invoice': { found: 8 },
  'w13-return-letter': { found: 8, kinds: '8 of 8' },
  'w14-declared': { found: 8, kinds: '4 of 4' },
  'w15-wide-label': { found: 8 },
  'w16-order-page': { found: 8 },
  'w17-slip-below': { found: 8, kinds: '7 of 8' },
  'w18-none': { found: 0, kinds: '10 of 10' },
  'x01-then-receipt': { found: 8 },
  'x02-then-trade-invoice': { found: 8 },
  'x03-declared-inside': { found: 8 },
  'x04-cropped': { found: 8 },
  'x05-batch': { found: 10 },
  'y01-under-invoice': { found: 8 },
  'y02-post-abroad': { found: 8 },
  'y03-return-below': { found: 8, kinds: '8 of 8' },
  'y04-roll-none': { found: 0 },
  'z01-label-alone': { found: 8 },
  'z02-half-and-steps': { found: 8 },
  'z03-quarter-alone': { found: 8 },
  'z04-beside-slip': { found: 8, kinds: '8 of 8' },
  'z05-receipt-below': { found: 8 },
  'z06-invoice-next': { found: 8 },
  'z07-return-page': { found: 8, kinds: '7 of 8' },
  'z08-picture-placed': { found: 8 },
  'z09-two-per-page': { found: 9 },
  'z10-slip-below': { found: 8, kinds: '8 of 8' },
  'z11-post-abroad': { found: 8 },
  'z12-declared-beside': { found: 8, kinds: '8 of 8' },
  'z13-pixels': { found: 8 },
  'z14-grey-scans': { found: 8 },
  'z15-designed-lying': { found: 8 },
  'z16-under-banner': { found: 8 },
  'z17-small-pages': { found: 8 },
  'z18-tab-below': { found: 8, kinds: '4 of 4' },
  'z19-slip-next': { found: 8, kinds: '8 of 8' },
  'z20-out-and-back': { found: 10, kinds: '6 of 6' },
  'z21-picture-and-slip': { found: 8, kinds: '4 of 4' },
  'z22-none': { found: 0, kinds: '10 of 10' },
  'z23-abroad-alone': { found: 8 },
  'z24-abroad-folded': { found: 8 },
  'z25-open-half': { found: 9, kinds: '6 of 6' },
  'z26-open-small': { found: 7, held: 1, kinds: '1 of 2' },
  'z27-tab-again': { found: 8, kinds: '2 of 2' },
  'z28-with-form': { found: 8, kinds: '8 of 8' },
  'z29-boxes-inside': { found: 16, kinds: '4 of 4' },
  'z30-tickets-none': { found: 0 },
  'j01-record-below': { found: 3 },
  'j02-steps-fold-label': { found: 3 },
  'j03-roll-with-slips': { found: 4, kinds: '4 of 4' },
  'j04-peel-off-foot': { found: 3, kinds: '3 of 3' },
  'j05-left-with-column': { found: 3 },
  'j06-a5-lying': { found: 3 },
  'j08-foot-left': { found: 3, kinds: '3 of 3' },
  'j09-quarter-and-proof': { found: 3 },
  'j10-four-places': { found: 5 },
  'j11-return-below': { found: 3, kinds: '3 of 3' },
  'j12-none': { found: 0, kinds: '3 of 3' },
  'j13-half-letter': { found: 4 },
  'j14-tab-packed': { found: 3, kinds: '3 of 3' },
  'j15-picture-and-invoice': { found: 4 },
  'j16-designed-lying': { found: 4 },
  'j17-return-cut-out': { found: 3, kinds: '3 of 3' },
  'j18-label-paper': { found: 4 },
  'j19-one-picture': { found: 4 },
  'j20-two-halves': { found: 5 },
  'j22-none': { found: 0, kinds: '2 of 2' },
  'j23-corner-right': { found: 3 },
  'j24-corner-left-slip-foot': { found: 3, kinds: '3 of 3' },
  'j25-roll-with-invoice': { found: 2 },
  's01-merged-market': { found: 2 },
  's02-pin-printer': { found: 2, held: 1 },
  's03-four-quarters': { found: 7 },
  's04-cut-here': { found: 2 },
  's05-whole-page-pixels': { found: 0, held: 2 },
  's06-two-scripts': { found: 2, held: 1 },
  's07-hub-and-slip': { found: 3, kinds: '3 of 3' },
  's09-small-paper': { found: 3 },
  's10-counter-scan': { found: 3 },
  's11-fax-look': { found: 2 },
  's12-phone-shade': { found: 2 },
  's13-none': { found: 0, kinds: '1 of 2' },
  's14-same-paper': { found: 3, kinds: '0 of 3' },
  's15-two-tongues': { found: 3 },
  's16-three-strips': { found: 5 },
  's17-thai-pixels': { found: 0, held: 2 },
  's18-letter-and-return': { found: 3, kinds: '3 of 3' },
  's19-form-beside': { found: 3 },
  's20-invoice-below': { found: 4 },
  's21-crowded-a6': { found: 3 },
  's22-square-paper': { found: 3 },
  's23-folded-scan': { found: 3 },
  's24-bare-address': { found: 0, held: 3 },
  's25-two-scanned': { found: 4 },
  's26-none': { found: 0, kinds: '1 of 2' },
  's27-corner-only': { found: 0, held: 4 },
  's28-dark-bands': { found: 3 },
  's29-ladder-half': { found: 2 },
  's30-grey-page': { found: 2 },
  's31-wharf-scan': { found: 2 },
  's32-crossed-square': { found: 3 },
  's33-back-on-top': { found: 2, kinds: '0 of 2' },
  's34-none': { found: 0 },
  's35-plainest': { found: 2, held: 1 },
  's36-packet': { found: 3 },
  's37-tall-beside-bill': { found: 2 },
  's38-printed-from-page': { found: 2 },
  's39-none': { found: 0 },
  'n01-letter-pasted': { found: 2, held: 1 },
  'n02-invoice-foot': { found: 4 },
  'n03-mail-around': { found: 4 },
  'n04-four-a-sheet': { found: 7 },
  'n05-over-customs': { found: 3 },
  'n06-roll-paper': { found: 2, held: 3 },
  'n08-faxed': { found: 1, held: 1 },
  'n09-two-drawn': { found: 3 },
  'n10-cells': { found: 1 },
  'n11-papers-none': { found: 0 },
  'n12-css-grid': { found: 4 },
  'n13-two-lying-sheet': { found: 5 },
  'n14-table-in-letter': { found: 3 },
  'n15-screenshot': { found: 2 },
  'n16-return-sheet': { found: 3, kinds: '1 of 3' },
  'n17-long-paper': { found: 3, kinds: '1 of 1' },
  'n18-png': { found: 3, held: 1 },
  'n19-three-columns': { found: 3 },
  'n20-one-bit-scan': { found: 2 },
  'n21-pouch': { found: 2, held: 1, kinds: '2 of 3' },
  'n22-drawn-small': { found: 3, held: 1 },
  'n23-more-none': { found: 0, kinds: '1 of 1' },
  'n24-order-to-pay': { found: 2, held: 1 },
  'n25-three-strips': { found: 5 },
  'n26-corner-marks': { found: 3 },
  'n27-forwarded': { found: 2 },
  'n28-roll-pictures': { found: 3, held: 3 },
  'n29-fax-on-side': { found: 2 },
  'n30-side-by-side': { found: 0, held: 2 },
  'n31-turned-pages': { found: 3 },
  'n32-label-then-papers': { found: 2, kinds: '1 of 1' },
  'n33-beside-typed-order': { found: 2, held: 1 },
  'n34-half-a4': { found: 2 },
  'n35-small-scan': { found: 1, held: 1 },
  'n36-last-none': { found: 0 },
  'n37-scribbled': { found: 2, held: 1 },
  'n38-out-and-back': { found: 1, held: 2, wrong: 1 },
  'n39-half-letter-terms': { found: 3 },
  'n41-oficio-deed': { found: 2 },
  'n42-stub-below': { found: 2 },
  'n43-fed-any-way': { found: 3 },
  'n44-lying-on-letter': { found: 3 },
  'n45-papers-of-the-post-none': { found: 0, kinds: '3 of 3' },
  'r01-label-alone': { found: 3 },
  'r02-fold-here': { found: 3 },
  'r03-steps-below-fold': { found: 3 },
  'r04-four-quarters': { found: 3 },
  'r05-posting-record': { found: 3 },
  'r06-label-then-note': { found: 2, kinds: '2 of 2' },
  'r07-two-on-lying-page': { found: 5 },
  'r08-under-tax-invoice': { found: 3 },
  'r09-integrated': { found: 3, kinds: '3 of 3' },
  'r10-bilingual': { found: 2, kinds: '1 of 1' },
  'r11-mailed-return': { found: 3, kinds: '3 of 3' },
  'r12-beside-costs': { found: 3 },
  'r13-receipt-below': { found: 3 },
  'r14-none': { found: 0, kinds: '1 of 4' },
  'r15-two-peel-offs': { found: 6, kinds: '6 of 6' },
  'r16-return-letter': { found: 3, kinds: '3 of 3' },
  'r17-lying-paper': { found: 3 },
  'r18-letter-labels': { found: 4 },
  'r19-quarter-fed-turned': { found: 3 },
  'r20-half-sheets': { found: 5 },
  'r21-long-paper': { found: 3 },
  'r22-lying-a5': { found: 2 },
  'r23-with-declaration': { found: 3 },
  'r24-four-places': { found: 5 },
  'r25-browser-page': { found: 3 },
  'r26-below-invoice': { found: 3 },
  'r27-paper-with-tab': { found: 3, kinds: '0 of 3' },
  'r28-order-mail': { found: 3, kinds: '3 of 3' },
  'r29-none': { found: 0, kinds: '4 of 4' },
  'r30-carton-paper': { found: 2 },
  'r31-slip-below': { found: 3, kinds: '3 of 3' },
  'r32-return-mail': { found: 2, kinds: '2 of 2' },
  'r33-steps-under-lying': { found: 3 },
  'r34-letter-with-corner': { found: 2 },
  'r35-picture-opened': { found: 2 },
  'r36-morning-in-one': { found: 3, kinds: '0 of 3' },
  'r37-customer-copy': { found: 3 },
  'r38-a5-with-receipt': { found: 3 },
  'r39-letter-box-parcel': { found: 2 },
  'r40-half-letter-abroad': { found: 2 },
  'r41-beside-order': { found: 3, kinds: '3 of 3' },
  'r42-fed-lying': { found: 3 },
  'r43-none': { found: 0, kinds: '2 of 2' },
  'r44-shrunk': { found: 2 },
  'r45-order-page': { found: 3 },
  'r46-several-pieces': { found: 4 },
  'r47-square-paper': { found: 2 },
  'r48-narrow-roll': { found: 2 },
  'r49-over-advert': { found: 3 },
  'r50-with-own-record': { found: 3 },
  'r51-out-and-back': { found: 2, held: 2, kinds: '2 of 2' },
  'r52-quarters': { found: 6 },
  'r53-foot-of-letter': { found: 2 },
  'r54-none': { found: 0 },
  'r55-right-half': { found: 3 },
  'r56-note-around': { found: 2 },
  'r57-back-and-how': { found: 2, kinds: '0 of 2' },
  'r58-over-tax-invoice': { found: 3 },
  'r59-between-columns': { found: 2 },
  'r60-quarter': { found: 2, held: 1 },
  'r61-half-letter': { found: 3, kinds: '3 of 3' },
  'r62-thirds': { found: 5 },
  'r63-none': { found: 0 },
  'r64-beside-long-text': { found: 3 },
  'r65-with-page-line': { found: 3 },
  'r66-label-then-record': { found: 2 },
  'r67-in-a-card': { found: 3 },
  'r68-order-left': { found: 3 },
  'r69-none': { found: 0 },
  'r70-quarter-french': { found: 3 },
  'r71-any-corner': { found: 3 },
  'r72-none': { found: 0 },
};

const totals = new Map<Half, Tally[]>();

describe.each(HALVES)('labels of other producers, %s part', (half) => {
  const files = foreignFiles(half);
  const layouts = [...new Set(files.map(({ truth }) => truth.layout))];

  it.each(layouts)('%s', { timeout: 120_000 }, async (layout) => {
    const tallies: Tally[] = [];
    for (const file of files) if (file.truth.layout === layout) tallies.push(await tallyOf(file, { draw: true }));
    const sum = sumOf(tallies);
    totals.set(half, [...(totals.get(half) ?? []), sum]);
    const { found, held = 0, wrong = 0, mistaken = 0, kinds = '0 of 0' } = FIGURES[layout] ?? { found: NaN };
    // The notes of the unseen half would be a look at it.
    expect(figures(sum), half === 'tuning' ? sum.notes.join('\n') : undefined).toBe(
      `${found} of ${sum.labels} found, ${held} held, ${wrong} wrong, ${sum.pagesWithout - mistaken} of ${sum.pagesWithout} pages without label kept, kinds ${kinds}`,
    );
    expect(sum.drawnWrong, 'labels that are drawn with less or more than their ink').toBe(0);
  });

  it('has enough pages, and figures for every layout', () => {
    expect(files.every(({ truth }) => truth.half === half)).toBe(true);
    expect(layouts.filter((layout) => !(layout in FIGURES))).toEqual([]);
    const pages = files.flatMap(({ truth }) => truth.pages);
    expect(pages.filter(({ labels }) => labels.length > 0).length).toBeGreaterThanOrEqual(
      { 'second-sight': 120, 'third-sight': 110, 'fourth-sight': 130, 'fifth-sight': 200, 'sixth-sight': 150, 'seventh-sight': 250 }[
        half as string
      ] ?? 150,
    );
    expect(pages.filter(({ labels }) => labels.length === 0).length).toBeGreaterThanOrEqual(30);
  });
});

const figures = ({ labels, found, held, wrong, pagesWithout, kept, kinds, kindsTold }: Tally): string =>
  `${found} of ${labels} found, ${held} held, ${wrong} wrong, ${kept} of ${pagesWithout} pages without label kept, kinds ${kindsTold} of ${kinds}`;

afterAll(() => {
  for (const half of HALVES) {
    const sum = sumOf(totals.get(half) ?? [emptyTally()]);
    console.log(`${half} part: ${figures(sum)}; of the wrong ${sum.off} lie on a label, ${sum.lost} labels neither found nor held`);
  }
});
