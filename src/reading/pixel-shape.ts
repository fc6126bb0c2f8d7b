/**
 * How high a picture's pixels are for their width, as its file says: 2.08 for a fax of 204×98 dpi. The decoder tells one of the two
 * resolutions only. 1 where nothing, or nothing sensible, is said.
 * @param page from 0, of a TIFF
 */
export function pixelShape(bytes: Uint8Array, page: number): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    const [across, down] = resolutions(view, page) ?? [1, 1];
    const shape = across / down;
    return shape >= 1 / MOST_UNEQUAL && shape <= MOST_UNEQUAL ? shape : 1;
  } catch (error) {
    // A place beyond the end of the bytes: what the decoder makes of such a file is its own affair.
    if (error instanceof RangeError) return 1;
    throw error;
  }
}

/** No device's dots are more unequal; what says so is wrong. */
const MOST_UNEQUAL = 4;

type Resolutions = readonly [across: number, down: number] | undefined;

function resolutions(view: DataView, page: number): Resolutions {
  switch (view.getUint32(0)) {
    case 0x49492a00:
      return ofTiff(view, page, true);
    case 0x4d4d002a:
      return ofTiff(view, page, false);
    case 0x89504e47:
      return ofPng(view);
    case 0xffd8ffe0:
      // JFIF, ISO/IEC 10918-5: the two densities follow name, version and unit (from memory).
      return [view.getUint16(14), view.getUint16(16)];
    default:
      return undefined;
  }
}

/** XResolution and YResolution of the page's directory, TIFF 6.0 section 8 (from memory). */
function ofTiff(view: DataView, page: number, little: boolean): Resolutions {
  let directory = view.getUint32(4, little);
  const entries = (): number => view.getUint16(directory, little);
  for (let skipped = 0; skipped < page; skipped++) directory = view.getUint32(directory + 2 + 12 * entries(), little);
  const tag = (wanted: number): number => {
    for (let entry = 0; entry < entries(); entry++) {
      const at = directory + 2 + 12 * entry;
      if (view.getUint16(at, little) !== wanted) continue;
      const value = view.getUint32(at + 8, little);
      return view.getUint32(value, little) / view.getUint32(value + 4, little);
    }
    return NaN;
  };
  return [tag(282), tag(283)];
}

/** The pHYs chunk, ISO/IEC 15948 section 11.3.5.3 (from memory); it stands before the first IDAT. */
function ofPng(view: DataView): Resolutions {
  for (let at = 8; ; at += 12 + view.getUint32(at)) {
    const type = view.getUint32(at + 4);
    if (type === 0x70485973) return [view.getUint32(at + 8), view.getUint32(at + 12)];
    if (type === 0x49444154) return undefined;
  }
}
