import { createHash } from 'node:crypto';
import { PDFName, type PDFContext, type PDFDict, type PDFRef } from '../reading/pdf-library.js';

const HEADER = Buffer.from('%PDF-1.7\n%\xe2\xe3\xcf\xd3\n', 'latin1');
/** Chunks handed on are about this large: small enough to be dropped soon, large enough to write well. */
const CHUNK = 256 * 1024;

/**
 * Writes a PDF object by object, forgetting each once it is written, so that a stack of thousands of pages never lies in memory
 * as objects. A plain cross-reference table (ISO 32000 7.5.4) and an /ID made from the content: the same objects give the
 * same bytes.
 */
export class PdfStreamWriter {
  private readonly offsets = new Map<number, number>();
  private readonly hash = createHash('sha256');
  private pending: Uint8Array[] = [];
  private pendingBytes = 0;
  private offset = 0;

  constructor(private readonly context: PDFContext) {
    this.put(HEADER);
  }

  /** Takes every object that the context holds out of it and gives the bytes once there are enough of them. */
  *flushObjects(): Generator<Uint8Array> {
    for (const [ref, object] of this.context.enumerateIndirectObjects()) {
      const bytes = Buffer.allocUnsafe(object.sizeInBytes());
      object.copyBytesInto(bytes, 0);
      this.offsets.set(ref.objectNumber, this.offset);
      this.put(Buffer.from(`${ref.objectNumber} ${ref.generationNumber} obj\n`, 'latin1'));
      this.put(bytes);
      this.put(Buffer.from('\nendobj\n', 'latin1'));
      this.context.delete(ref);
      if (this.pendingBytes >= CHUNK) yield this.take();
    }
  }

  /** The cross-reference table and the trailer; the last chunk. */
  *end(root: PDFRef): Generator<Uint8Array> {
    yield* this.flushObjects();
    const startxref = this.offset;
    const size = this.context.largestObjectNumber + 1;
    const rows = ['0000000000 65535 f \n'];
    for (let number = 1; number < size; number++) {
      const offset = this.offsets.get(number);
      rows.push(offset === undefined ? '0000000000 00001 f \n' : `${String(offset).padStart(10, '0')} 00000 n \n`);
    }
    const id = this.hash.copy().digest('hex').slice(0, 32);
    const trailer = `trailer\n<< /Size ${size} /Root ${root.toString()} /ID [<${id}> <${id}>] >>\nstartxref\n${startxref}\n%%EOF\n`;
    this.put(Buffer.from(`xref\n0 ${size}\n${rows.join('')}${trailer}`, 'latin1'));
    yield this.take();
  }

  private put(bytes: Uint8Array): void {
    this.pending.push(bytes);
    this.pendingBytes += bytes.length;
    this.offset += bytes.length;
    this.hash.update(bytes);
  }

  private take(): Uint8Array {
    const chunk = this.pending.length === 1 ? (this.pending[0] ?? new Uint8Array()) : Buffer.concat(this.pending);
    this.pending = [];
    this.pendingBytes = 0;
    return chunk;
  }
}

/** `/ViewerPreferences << /PrintScaling /None >>` asks viewers not to fit the page to the paper (ISO 32000, handbook section 7.1). */
export function askForTrueSize(catalog: PDFDict, context: PDFContext): void {
  catalog.set(PDFName.of('ViewerPreferences'), context.obj({ PrintScaling: 'None' }));
}
