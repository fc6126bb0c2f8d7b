import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inTempFolder, runTool } from './tools.js';

/** A page as libcups reads it. */
export interface ReadPage {
  readonly mediaClass: string;
  readonly pageSizeName: string;
  readonly resolution: readonly [number, number];
  readonly pageSize: readonly [number, number];
  readonly width: number;
  readonly height: number;
  readonly bitsPerPixel: number;
  readonly colourSpace: number;
  readonly totalPages: number;
  /** 0 burned, 255 paper. */
  readonly data: Uint8Array;
}

/**
 * libcups by ctypes: it comes with Ghostscript, which is linked against it. The header is what cups/raster.h declares; every line is read by the library's own
 * decoder and handed on as hex.
 */
const PROGRAM = `
import ctypes, json, os, sys
U, F = ctypes.c_uint, ctypes.c_float
T = ctypes.c_char * 64
class Header(ctypes.Structure):
    _fields_ = [('MediaClass', T), ('MediaColor', T), ('MediaType', T), ('OutputType', T),
        ('advance', U * 5), ('HWResolution', U * 2), ('box', U * 4), ('sheet', U * 3), ('Margins', U * 2), ('feed', U * 5),
        ('NumCopies', U), ('Orientation', U), ('OutputFaceUp', U), ('PageSize', U * 2), ('separations', U * 3),
        ('cupsWidth', U), ('cupsHeight', U), ('cupsMediaType', U), ('cupsBitsPerColor', U), ('cupsBitsPerPixel', U), ('cupsBytesPerLine', U),
        ('cupsColorOrder', U), ('cupsColorSpace', U), ('compression', U * 4), ('cupsNumColors', U), ('scaling', F), ('pageSize', F * 2),
        ('imagingBox', F * 4), ('cupsInteger', U * 16), ('cupsReal', F * 16), ('cupsString', T * 16), ('marker', T), ('intent', T), ('cupsPageSizeName', T)]
assert ctypes.sizeof(Header) == 1796
cups = ctypes.CDLL('libcups.so.2')
cups.cupsRasterOpen.restype = ctypes.c_void_p
cups.cupsRasterOpen.argtypes = [ctypes.c_int, ctypes.c_int]
cups.cupsRasterReadHeader2.argtypes = [ctypes.c_void_p, ctypes.POINTER(Header)]
cups.cupsRasterReadPixels.argtypes = [ctypes.c_void_p, ctypes.c_char_p, U]
stream = cups.cupsRasterOpen(os.open(sys.argv[1], os.O_RDONLY), 0)
assert stream
pages = []
while True:
    h = Header()
    if not cups.cupsRasterReadHeader2(stream, ctypes.byref(h)): break
    line = ctypes.create_string_buffer(h.cupsBytesPerLine)
    lines = []
    for _ in range(h.cupsHeight):
        assert cups.cupsRasterReadPixels(stream, line, h.cupsBytesPerLine) == h.cupsBytesPerLine
        lines.append(line.raw.hex())
    pages.append(dict(mediaClass=h.MediaClass.decode(), pageSizeName=h.cupsPageSizeName.decode(), resolution=list(h.HWResolution),
        pageSize=list(h.PageSize), width=h.cupsWidth, height=h.cupsHeight, bitsPerPixel=h.cupsBitsPerPixel,
        colourSpace=h.cupsColorSpace, totalPages=h.cupsInteger[0], lines=lines))
print(json.dumps(pages))
`;

/** Reads a raster stream by libcups; as many pages as it takes for whole ones. Throws when a line is missing. */
export async function libcupsPages(stream: Uint8Array): Promise<readonly ReadPage[]> {
  return inTempFolder((folder) => {
    const path = join(folder, 'in.pwg');
    writeFileSync(path, stream);
    const pages = JSON.parse(runTool('python3', ['-c', PROGRAM, path]).toString()) as readonly (Omit<ReadPage, 'data'> & {
      readonly lines: readonly string[];
    })[];
    return pages.map(({ lines, ...page }) => ({ ...page, data: dotsOf(lines, page.width, page.colourSpace) }));
  });
}

/** `black` (3) has 1 for a burned dot. */
function dotsOf(lines: readonly string[], width: number, colourSpace: number): Uint8Array {
  if (colourSpace !== 3) throw new Error(`colour space ${String(colourSpace)} is not black`);
  const data = new Uint8Array(width * lines.length);
  lines.forEach((hex, y) => {
    const line = Buffer.from(hex, 'hex');
    for (let x = 0; x < width; x++) data[y * width + x] = line.readUInt8(x >> 3) & (0x80 >> (x & 7)) ? 0 : 255;
  });
  return data;
}
