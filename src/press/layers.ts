import { PDFArray, PDFDict, PDFName, type PDFContext, type PDFObject } from '../reading/pdf-library.js';

/**
 * Joins the layer settings (/OCProperties) of several sources, all already copied into `context`, so that what a source
 * hides stays hidden. Only each layer's starting state is kept: paper has no switches.
 */
export function joinLayers(sources: readonly PDFDict[], context: PDFContext): PDFDict | undefined {
  if (sources.length === 0) return undefined;
  const groups: PDFObject[] = [];
  const off: PDFObject[] = [];
  for (const properties of sources) {
    const own = list(properties, 'OCGs');
    groups.push(...own);
    const start: unknown = properties.lookup(PDFName.of('D'));
    if (!(start instanceof PDFDict)) continue;
    // References of one context are the same object, so membership needs no comparing by value.
    const on = new Set(list(start, 'ON'));
    const hidden = start.lookup(PDFName.of('BaseState')) === PDFName.of('OFF') ? own.filter((each) => !on.has(each)) : list(start, 'OFF');
    off.push(...hidden);
  }
  return context.obj({ OCGs: groups, D: { Order: [], OFF: off } });
}

function list(dict: PDFDict, key: string): PDFObject[] {
  const value: unknown = dict.lookup(PDFName.of(key));
  return value instanceof PDFArray ? value.asArray() : [];
}
