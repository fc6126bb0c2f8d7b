import { crc32, deflateRawSync } from 'node:zlib';

/** One file of a ZIP; everything that can be wrong with it can be said. */
export interface ZipFile {
  readonly name: string | Buffer;
  readonly data: Uint8Array;
  readonly stored?: boolean;
  readonly encrypted?: boolean;
  /** Compression method number; default 8 (deflate) or 0 (stored). */
  readonly method?: number;
  /** What the ZIP says of the unpacked size; default the truth. */
  readonly saidSize?: number;
  readonly saidCrc?: number;
}

/** A ZIP by hand (PKWARE's APPNOTE 6.3.3, sections 4.3.7, 4.3.12 and 4.3.16), so that it can also be a wrong one. */
export function zipOf(files: readonly ZipFile[]): Buffer {
  const parts: Buffer[] = [];
  const directory: Buffer[] = [];
  let offset = 0;
  for (const file of files) {
    const name = Buffer.from(file.name);
    const packed = file.stored === true ? Buffer.from(file.data) : deflateRawSync(file.data);
    const shared = Buffer.alloc(26);
    shared.writeUInt16LE(20, 0);
    shared.writeUInt16LE(0x0800 | (file.encrypted === true ? 1 : 0), 2);
    shared.writeUInt16LE(file.method ?? (file.stored === true ? 0 : 8), 4);
    shared.writeUInt32LE(file.saidCrc ?? crc32(file.data), 10);
    shared.writeUInt32LE(packed.length, 14);
    shared.writeUInt32LE(file.saidSize ?? file.data.length, 18);
    shared.writeUInt16LE(name.length, 22);
    const local = Buffer.concat([Buffer.from('PK\x03\x04', 'latin1'), shared, name, packed]);
    const rest = Buffer.alloc(14);
    rest.writeUInt32LE(offset, 10);
    directory.push(Buffer.concat([Buffer.from('PK\x01\x02\x14\x00', 'latin1'), shared, rest, name]));
    parts.push(local);
    offset += local.length;
  }
  const central = Buffer.concat(directory);
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 'latin1');
  end.writeUInt16LE(files.length, 8);
  end.writeUInt16LE(files.length, 10);
  end.writeUInt32LE(central.length, 12);
  end.writeUInt32LE(offset, 16);
  return Buffer.concat([...parts, central, end]);
}
