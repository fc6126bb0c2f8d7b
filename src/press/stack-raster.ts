import { dotsPerPt, type Grid } from '../geometry/grid.js';
import { openPdf } from '../reading/open-pdf.js';
import { pwgRaster, type Dots } from './pwg-raster.js';
import { numbersInDots, type LoadPart, type Stack } from './stack.js';

/**
 * The pages of a stack of dots as PWG raster, numbers and all: the dots of its PDF, one for one. In chunks.
 * @param load gives the bytes of a pressed document; asked once for each row of its pages in the stack
 */
export async function* stackRaster(load: LoadPart, stack: Stack, grid: Grid): AsyncGenerator<Uint8Array> {
  yield* pwgRaster(pagesOf(load, stack, grid), stack.pages.length, stack.media, grid);
}

async function* pagesOf(load: LoadPart, stack: Stack, grid: Grid): AsyncGenerator<Dots> {
  const numbers = await numbersInDots(stack, grid);
  const whole = { x: 0, y: 0, width: stack.media.width, height: stack.media.height };
  for (let first = 0; first < stack.pages.length;) {
    const part = stack.pages[first]?.part ?? 0;
    const opened = await openPdf(await load(part), { as: 'output' });
    if ('refused' in opened) throw new Error(`stack-raster: the press's own document does not open (${opened.refused.code})`);
    try {
      for (; stack.pages[first]?.part === part; first++) {
        const page = opened.page(stack.pages[first]?.page ?? 0).render(whole, dotsPerPt(grid));
        const number = numbers.get(first);
        if (number) lay(number.dots, number, page);
        yield page;
      }
    } finally {
      opened.close();
    }
  }
}

/** Lays a number's dots onto a page. */
function lay(number: Dots, { x, y }: { readonly x: number; readonly y: number }, page: Dots): void {
  for (let row = 0; row < number.height; row++) {
    const line = number.data.subarray(row * number.width, (row + 1) * number.width);
    page.data.set(line, (y + row) * page.width + x);
  }
}
