import { degrees, PDFDict, PDFDocument, PDFName, PDFNumber, PDFRawStream, PDFRef, rgb, StandardFonts } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { visiblePage } from '../../src/press/visible-page.js';
import { openPdf } from '../../src/reading/open-pdf.js';
import type { SourceDocument } from '../../src/reading/source.js';

async function drawn(change: (pdf: PDFDocument) => void | Promise<void> = () => undefined, objectStreams = false): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  const font = await pdf.embedFont(StandardFonts.Helvetica);
  const page = pdf.addPage([288, 432]);
  page.drawText('Sample words', { x: 20, y: 400, size: 12, font });
  page.drawRectangle({ x: 20, y: 20, width: 100, height: 50, color: rgb(0, 0, 0) });
  await change(pdf);
  return pdf.save({ useObjectStreams: objectStreams });
}

async function open(bytes: Uint8Array): Promise<SourceDocument> {
  const document = await openPdf(bytes);
  if ('refused' in document) throw new Error(document.refused.code);
  return document;
}

async function refusal(bytes: Uint8Array): Promise<string> {
  const document = await openPdf(bytes);
  if (!('refused' in document)) throw new Error('it opened');
  expect(document.refused.remedy.length).toBeGreaterThan(10);
  return document.refused.code;
}

const fontsOf = (pdf: PDFDocument): readonly PDFDict[] =>
  pdf.context
    .enumerateIndirectObjects()
    .flatMap(([, object]) => (object instanceof PDFDict && object.get(PDFName.of('Type')) === PDFName.of('Font') ? [object] : []));

describe('openPdf', () => {
  it.each([false, true])('reads size and words; object streams: %s', async (objectStreams) => {
    const document = await open(await drawn(undefined, objectStreams));
    const page = document.page(1);
    expect([page.width, page.height]).toEqual([288, 432]);
    expect(page.words().map(({ text, turn }) => [text, turn])).toEqual([
      ['Sample', 0],
      ['words', 0],
    ]);
    expect(page.words()[0]?.box.y ?? 0).toBeCloseTo(432 - 400 - 8.6, 0);
    expect(() => document.page(2)).toThrow(RangeError);
    document.close();
  });

  it('turns with the page: /Rotate 90 makes words run down', async () => {
    const document = await open(await drawn((pdf) => pdf.getPage(0).setRotation(degrees(90))));
    const page = document.page(1);
    expect([page.width, page.height, page.words()[0]?.turn]).toEqual([432, 288, 90]);
    document.close();
  });

  it('a UserUnit of 2 makes the page twice as large (ISO 32000)', async () => {
    const document = await open(await drawn((pdf) => pdf.getPage(0).node.set(PDFName.of('UserUnit'), PDFNumber.of(2))));
    const page = document.page(1);
    expect([page.width, page.height]).toEqual([576, 864]);
    expect(page.words()[0]?.fontSize).toBeCloseTo(24, 1);
    document.close();
  });

  it('takes a UserUnit that is told by another object as the press does', async () => {
    const document = await open(
      await drawn((pdf) => pdf.getPage(0).node.set(PDFName.of('UserUnit'), pdf.context.register(PDFNumber.of(2)))),
    );
    const source = document.pressSource(1);
    const pressed = source.kind === 'pdf' ? visiblePage(source.pdf.getPage(0).node) : undefined;
    expect([document.page(1).width, document.page(1).height]).toEqual([576, 864]);
    expect([pressed?.width, pressed?.height]).toEqual([576, 864]);
    document.close();
  });

  it('makes form fields part of the page, and says so', async () => {
    const document = await open(
      await drawn((pdf) => {
        const field = pdf.getForm().createTextField('to');
        field.setText('Placeholder');
        field.addToPage(pdf.getPage(0), { x: 150, y: 200, width: 120, height: 20 });
      }),
    );
    expect(document.notes.join()).toContain('made part of the page');
    expect(
      document
        .page(1)
        .words()
        .map(({ text }) => text),
    ).toContain('Placeholder');
    document.close();
  });

  it('tells no words that the CropBox cuts away', async () => {
    const document = await open(
      await drawn(async (pdf) => {
        const page = pdf.getPage(0);
        page.drawText('unseen', { x: 20, y: 100, size: 12, font: await pdf.embedFont(StandardFonts.Helvetica) });
        page.setCropBox(0, 200, 288, 232);
      }),
    );
    const texts = document
      .page(1)
      .words()
      .map(({ text }) => text);
    expect(texts).toEqual(['Sample', 'words']);
    document.close();
  });

  it('does not mind a wrong cross-reference offset in a whole file', async () => {
    const document = await open(
      Buffer.from(
        Buffer.from(await drawn())
          .toString('latin1')
          .replace(/startxref\n\d+/, 'startxref\n7'),
        'latin1',
      ),
    );
    expect(document.page(1).words()).toHaveLength(2);
    document.close();
  });

  it('does not mind a reference to nothing that no page draws with', async () => {
    const document = await open(await drawn((pdf) => pdf.catalog.set(PDFName.of('Metadata'), PDFRef.of(9999))));
    document.close();
  });

  it('does not mind a font that does not say what its letters mean', async () => {
    const bytes = await drawn(async (pdf) => {
      await pdf.flush();
      fontsOf(pdf).forEach((font) => font.set(PDFName.of('ToUnicode'), PDFRef.of(9999)));
    });
    const document = await open(bytes);
    expect(document.page(1).words()).toHaveLength(2);
    document.close();
  });

  it('refuses a font without its file, and a picture without its mask or its colours', async () => {
    const noFile = await drawn(async (pdf) => {
      await pdf.flush();
      const descriptor = pdf.context.register(pdf.context.obj({ Type: 'FontDescriptor', FontName: 'Sample', FontFile: PDFRef.of(9999) }));
      fontsOf(pdf).forEach((font) => font.set(PDFName.of('FontDescriptor'), descriptor));
    });
    expect(await refusal(noFile)).toBe('reading/damaged');
    for (const part of ['SMask', 'Mask', 'ColorSpace']) {
      const picture = await drawn((pdf) => {
        const { context } = pdf;
        const entries = { Type: 'XObject', Subtype: 'Image', Width: 1, Height: 1, BitsPerComponent: 8, ColorSpace: 'DeviceGray' };
        const image = context.stream(Uint8Array.of(0), { ...entries, [part]: PDFRef.of(9999) });
        pdf.getPage(0).node.setXObject(PDFName.of('Im0'), context.register(image));
      });
      expect(await refusal(picture), part).toBe('reading/damaged');
    }
  });

  it('refuses what is cut off: its last words may be missing', async () => {
    const bytes = await drawn();
    for (const share of [0.3, 0.6, 0.9]) expect(await refusal(bytes.slice(0, Math.floor(bytes.length * share)))).toBe('reading/cut-off');
  });

  it('refuses a page that lacks a font or its contents', async () => {
    const noFont = await drawn((pdf) => {
      const fonts = pdf.getPage(0).node.Resources()?.lookup(PDFName.of('Font'), PDFDict);
      for (const name of fonts?.keys() ?? []) fonts?.set(name, PDFRef.of(9999));
    });
    expect(await refusal(noFont)).toBe('reading/damaged');
    const noContents = await drawn((pdf) => pdf.getPage(0).node.set(PDFName.of('Contents'), PDFRef.of(9999)));
    expect(await refusal(noContents)).toBe('reading/damaged');
  });

  it('refuses junk between header and end', async () => {
    expect(await refusal(Buffer.from('%PDF-1.4\njunk\n%%EOF\n'))).toBe('reading/damaged');
  });

  it('refuses a page of monstrous size', async () => {
    const bytes = await drawn((pdf) => pdf.getPage(0).setSize(14_000, 400));
    expect(await refusal(bytes)).toBe('reading/huge-page');
  });

  it('a stream whose length is told by another object is whole', async () => {
    const bytes = await drawn((pdf) => {
      for (const [, object] of pdf.context.enumerateIndirectObjects()) {
        if (object instanceof PDFRawStream)
          object.dict.set(PDFName.of('Length'), pdf.context.register(PDFNumber.of(object.contents.length)));
      }
    });
    const document = await open(bytes);
    expect(document.page(1).words()).toHaveLength(2);
    document.close();
  });
});
