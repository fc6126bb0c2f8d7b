import type { PDFContext } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { drawRisks, type DrawRisk } from '../../src/reading/draw-risk.js';
import { pictureSource } from '../press/source-double.js';
import { LAYOUTS } from '../samples/layouts.js';
import { sample } from '../samples/sample.js';
import { BY_NUMBER, opened, pageOf, RARE_LETTERS, STANDARD, type Resources } from './risky-pages.js';

/** Of a page that sets font F. */
async function risksOf(resources: (context: PDFContext) => Resources, content = 'BT /F 9 Tf ET'): Promise<readonly DrawRisk[]> {
  const source = await opened(await pageOf(resources, content));
  const risks = drawRisks(source.pressSource(1), 1);
  source.close();
  return risks;
}

const image = (context: PDFContext, entries: Resources): Resources => ({
  XObject: {
    I: context.register(
      context['Filter' in entries ? 'stream' : 'flateStream']('', { Type: 'XObject', Subtype: 'Image', Width: 1, Height: 1, ...entries }),
    ),
  },
});
const form = (context: PDFContext, entries: Resources): Resources => ({
  XObject: { F: context.register(context.stream('', { Type: 'XObject', Subtype: 'Form', BBox: [0, 0, 1, 1], ...entries })) },
});
const state = (entries: Resources) => (): Resources => ({ ExtGState: { G: { Type: 'ExtGState', ...entries } } });
const font = (context: PDFContext, entries: Resources): Resources => ({ Font: { F: context.register(context.obj(entries as never)) } });

describe('what engines draw differently', () => {
  it.each<[DrawRisk, (context: PDFContext) => Resources]>([
    ['font not embedded', (context) => font(context, RARE_LETTERS())],
    ['font not embedded', (context) => font(context, { ...STANDARD(), BaseFont: 'ZapfDingbats' })],
    ['font not embedded', (context) => font(context, { ...STANDARD(), Subtype: 'TrueType', BaseFont: 'Helvetica' })],
    ['font not embedded', (context) => font(context, { ...STANDARD(), BaseFont: 'Helvetica-Neue' })],
    ['font not embedded', (context) => font(context, BY_NUMBER(context))],
    ['Type 3 font', (context) => font(context, { Type: 'Font', Subtype: 'Type3', FontBBox: [0, 0, 1, 1] })],
    ['JPEG 2000 picture', (context) => image(context, { Filter: 'JPXDecode' })],
    ['JBIG2 picture', (context) => image(context, { Filter: ['JBIG2Decode'] })],
    ['CCITT picture', (context) => image(context, { Filter: 'CCITTFaxDecode' })],
    ['soft mask', (context) => image(context, { SMask: context.register(context.stream('', { Subtype: 'Image' })) })],
    ['soft mask', state({ SMask: { Type: 'Mask', S: 'Luminosity' } })],
    ['blend mode', state({ BM: 'Multiply' })],
    ['blend mode', state({ BM: ['Unheard', 'Darken'] })],
    ['transparency', state({ ca: 0.5 })],
    ['transparency group', (context) => form(context, { Group: { S: 'Transparency' } })],
    ['shading', () => ({ Shading: { S: { ShadingType: 2 } } })],
    ['pattern', () => ({ Pattern: { P: { PatternType: 2 } } })],
    ['JPEG 2000 picture', (context) => form(context, { Resources: form(context, { Resources: image(context, { Filter: 'JPXDecode' }) }) })],
  ])('%s', async (risk, resources) => {
    expect(await risksOf(resources)).toEqual([risk]);
  });

  it('nothing on a page of lines, flate pictures, plain states and opaque forms', async () => {
    const plain = (context: PDFContext): Resources => ({
      ...image(context, {}),
      ExtGState: { G: { BM: 'Normal', CA: 1, ca: 1, SMask: 'None' } },
      Shading: {},
    });
    expect(await risksOf(plain)).toEqual([]);
    expect(await risksOf((context) => form(context, { Resources: {} }))).toEqual([]);
  });

  it.each(['Helvetica', 'Helvetica-BoldOblique', 'Times-Roman', 'Courier-Bold'])(
    'nothing of the standard font %s in its own letters',
    async (BaseFont) => {
      expect(await risksOf((context) => font(context, { ...STANDARD(), BaseFont }))).toEqual([]);
    },
  );

  it('nothing of a font that no content sets, as in files that list them all', async () => {
    const absent = (context: PDFContext): Resources => font(context, { ...STANDARD(), BaseFont: 'ZapfDingbats' });
    expect(await risksOf(absent, '')).toEqual([]);
    expect(await risksOf(absent, 'BT /F2 9 Tf (F) Tj ET')).toEqual([]);
    expect(await risksOf(absent, 'BT /F\n-9.5 Tf ET')).toEqual(['font not embedded']);
    expect(await risksOf(absent, 'BT /#46 9 Tf ET')).toEqual(['font not embedded']);
  });

  it.each([{}, { Resources: {} }])('a font of the page that a form sets: %j', async (more) => {
    const absent = { ...STANDARD(), BaseFont: 'ZapfDingbats' };
    const inForm = (context: PDFContext): Resources => ({
      ...font(context, absent),
      XObject: { X: context.register(context.stream('BT /F 9 Tf ET', { Subtype: 'Form', BBox: [0, 0, 1, 1], ...more })) },
    });
    // With resources of its own a form sees nothing of the page's.
    expect(await risksOf(inForm, '/X Do')).toEqual('Resources' in more ? [] : ['font not embedded']);
    const own = (context: PDFContext): Resources => ({
      XObject: {
        X: context.register(
          context.stream('BT /F 9 Tf ET', { Subtype: 'Form', BBox: [0, 0, 1, 1], Resources: font(context, absent) as never }),
        ),
      },
    });
    expect(await risksOf(own, '/X Do')).toEqual(['font not embedded']);
  });

  it('nothing of a font that the file holds', async () => {
    const layout = LAYOUTS.find(({ kinds }) => kinds.includes('vector'));
    if (!layout) throw new Error('no layout is drawn as vector');
    const held = (context: PDFContext): Resources =>
      font(context, {
        Type: 'Font',
        Subtype: 'TrueType',
        BaseFont: 'Held',
        FontDescriptor: { Type: 'FontDescriptor', FontFile2: context.register(context.stream('')) },
      });
    expect(await risksOf(held)).toEqual([]);
    const source = await opened((await sample(layout, 'vector', 0)).bytes);
    expect(drawRisks(source.pressSource(1), 1)).toEqual([]);
    source.close();
  });

  it('a form that holds itself ends', async () => {
    const itself = (context: PDFContext): Resources => {
      const ref = context.nextRef();
      context.assign(ref, context.stream('', { Subtype: 'Form', Resources: { XObject: { F: ref } }, Group: { S: 'Transparency' } }));
      return { XObject: { F: ref } };
    };
    expect(await risksOf(itself)).toEqual(['transparency group']);
  });

  it('nothing of a source that is a picture', () => {
    const picture = { width: 2, height: 1, channels: 1, data: new Uint8Array(2) } as const;
    expect(drawRisks(pictureSource(picture as never, 2, 1).pressSource(1), 1)).toEqual([]);
  });
});
