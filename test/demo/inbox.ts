import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { CARRIERS, STUDIO } from '../samples/names.js';
import type { DemoFile } from './demo-file.js';
import { plantedFaults } from './planted.js';
import { goodFiles, PAGES, PAIRS, PICTURES, RETURNS, SHEETS, SHEETS_OF_TWO } from './studio.js';

/** The demo's pipeline, as a seller would write it. */
export const PIPELINE = `# yaml-language-server: $schema=../recipes/pipeline.schema.json
#
# The demo's pipeline: an invented studio with six invented channels. Change it and run
#   node dist/cli.js run --config demo/pipeline.yaml
# (npm run demo empties this folder and writes it anew.)

media: 4x6in
grid: 203dpi
out: out

# Another printer: customs declarations that can't be read at the size of a label go there at true size, each with its parcel's number.
# Label sheets that are cut in two are an output of their own: one channel's labels lie on them, two a sheet.
outputs:
  office: { media: letter, margins: 5mm }
  label-sheets: { media: letter, margins: 5mm }
large-pages: office

# What stands on slips that are made from orders, and by what parcels are sorted.
studio:
  name: ${STUDIO}
  contact: [7 Example Street, Sampleton XX 00001, 555-0142]
stack-order: [channel, ship-by, sku]
lists: letter # the pick list and the hand-over list

channels:
  # A letter page for each order: the label sideways on its upper half, a receipt below. It has no slips, so they are made
  # from its orders.
  - name: ${SHEETS}
    files: inbox/${SHEETS}/*
    orders: inbox/${SHEETS}/orders.csv
    carrier: ${CARRIERS.tidewick}
    recipe: recipes/${SHEETS}.yaml

  # One document with all: a label page, then its packing slip.
  - name: ${PAIRS}
    files: inbox/${PAIRS}/*
    recipe: label-then-slip

  # Two labels on an A4 page.
  - name: ${SHEETS_OF_TWO}
    files: inbox/${SHEETS_OF_TWO}/*
    recipe: two-halves

  # Pictures, some with wrong resolution data. They are laid on label sheets, two a sheet; the first position of the first is used up.
  - name: ${PICTURES}
    files: inbox/${PICTURES}/*
    print-on: label-sheets
    recipe: two-up-sheets
    options:
      impose: { first-free: 2, cut-marks: true }

  # This channel hands over two kinds of pages: label and slip on one page …
  - name: ${PAGES} with slip
    files: inbox/${PAGES}/with-slip-*
    recipe: label-and-slip

  # … and anything else, some of it in a ZIP; two parcels have customs declarations.
  - name: ${PAGES}
    files: [inbox/${PAGES}/*, "!inbox/${PAGES}/with-slip-*"]
    recipe: any-page

  # Return labels on letter pages.
  - name: ${RETURNS}
    files: inbox/${RETURNS}/*
    recipe: return-label
`;

/** The recipe of the channel whose slips are made from orders: its `orders` is what `slipyard draft --orders` writes for them. */
export const ORDER_RECIPE = `# yaml-language-server: $schema=../../recipes/recipe.schema.json
about: A letter page with one label on its upper half; its slip is made from the order.
orders:
  columns:
    order: Order
    state: Status
    ordered-on: Ordered
    ship-by: Ship by
    buyer: Buyer
    address: [Street, Unit, Town]
    postcode: Postcode
    country: Country
    sku: SKU
    description: Item
    quantity: Pieces
    bin: Bin
    gift-message: Gift message
  file-name: order-{order}-*
steps:
  - split-pages
  - locate-label: { place: upper-half, by: [frame, picture, ink] }
  - rotate: upright
  - scale
  - packing-slip: from-orders
  - verify
  - number
`;

/** Every file of the studio's day; the same bytes each time. */
export async function demoFiles(): Promise<readonly DemoFile[]> {
  const good = await goodFiles();
  return [...good, ...(await plantedFaults(good))];
}

/** Writes inbox and pipeline under `folder`, which is emptied first. */
export function writeInbox(folder: string, files: readonly DemoFile[]): void {
  rmSync(folder, { recursive: true, force: true });
  for (const { path, bytes } of files) {
    const file = join(folder, 'inbox', path);
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, bytes);
  }
  writeFileSync(join(folder, 'pipeline.yaml'), PIPELINE);
  mkdirSync(join(folder, 'recipes'), { recursive: true });
  writeFileSync(join(folder, 'recipes', `${SHEETS}.yaml`), ORDER_RECIPE);
}
