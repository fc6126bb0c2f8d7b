import { describe, expect, it } from 'vitest';
import { parseDocument, isMap, isNode } from 'yaml';
import { ConfigFile } from '../../src/config/config-file.js';
import { readMedia, readOptionValue } from '../../src/config/option-value.js';
import type { Slot } from '../../src/config/read-value.js';
import type { OptionKind } from '../../src/steps/option.js';

function slotFor(yaml: string): Slot {
  const text = `size: ${yaml}`;
  const { contents } = parseDocument(text);
  const value: unknown = isMap(contents) ? contents.items[0]?.value : undefined;
  return { file: new ConfigFile('x.yaml', text), name: 'size', node: isNode(value) ? value : undefined, at: { start: 0, end: 4 } };
}

/** The value, or the remedy. */
function read(kind: OptionKind, yaml: string): unknown {
  const slot = slotFor(yaml);
  const value = readOptionValue(slot, kind);
  expect(slot.file.diagnostics).toHaveLength(value === undefined ? 1 : 0);
  return value ?? slot.file.diagnostics[0]?.remedy;
}

describe('values of options', () => {
  it.each<[OptionKind, string, unknown]>([
    [{ kind: 'length' }, '4in', { value: 4, unit: 'in' }],
    [{ kind: 'length' }, "'-2.5 mm'", { value: -2.5, unit: 'mm' }],
    [{ kind: 'length' }, '10', 'Write it with its unit: `10mm`, `10in`, `10pt` or `10dots`.'],
    [{ kind: 'length' }, '1.5cm', 'Write `15mm`.'],
    [{ kind: 'length' }, `'4"'`, 'Write `4in`.'],
    [{ kind: 'length' }, '10MM', 'Write `10mm`.'],
    [{ kind: 'length' }, '10constructor', 'Write it with its unit: `10mm`, `10in`, `10pt` or `10dots`.'],
    [{ kind: 'length', min: { value: 0, unit: 'mm' } }, '0pt', { value: 0, unit: 'pt' }],
    [{ kind: 'length', min: { value: 1, unit: 'in' } }, '25.4mm', { value: 25.4, unit: 'mm' }],
    [{ kind: 'length', min: { value: 1, unit: 'in' } }, '25.3mm', 'Write `1in` or more.'],
    [{ kind: 'percent', min: 0.5, max: 1 }, '94%', 0.94],
    [{ kind: 'percent', min: 0.5, max: 1 }, '94', 'Write it as `94%`.'],
    [{ kind: 'percent', min: 0.5, max: 1 }, '0,94', 'Write it as `94%`.'],
    [{ kind: 'percent', min: 0.5, max: 1 }, '500', 'Write it as `100%`.'],
    [{ kind: 'integer', min: 1, max: 9 }, '9', 9],
    [{ kind: 'integer', min: 1, max: 9 }, '10', 'Write a number from 1 to 9.'],
    [{ kind: 'integer', min: 1, max: 9 }, '0x3', 'Write digits only, for example `1`.'],
    [{ kind: 'boolean' }, 'true', true],
    [{ kind: 'boolean' }, 'False', false],
    [{ kind: 'boolean' }, 'off', 'Write `false`, without quotes.'],
    [{ kind: 'choice', values: ['0', '90'] }, '90', '90'],
    [{ kind: 'choice', values: ['yes', 'no'] }, 'no', 'no'],
    [{ kind: 'choices', values: ['a', 'b'] }, 'b', ['b']],
    [{ kind: 'choices', values: ['a', 'b'] }, '[b, a]', ['b', 'a']],
    [{ kind: 'pages' }, '2', '2'],
    [{ kind: 'pages' }, '1, 3,5 - 7', 'Pages count from 1, the smaller number first: `2-4`.'],
    [{ kind: 'pages' }, '1, 3,5-7', '1,3,5-7'],
    [{ kind: 'phrases' }, 'one phrase', ['one phrase']],
    [{ kind: 'phrases' }, '[]', []],
    [{ kind: 'media' }, '4 x 6', 'Write `4x6in`.'],
    [{ kind: 'media' }, '100x150', 'Write `100x150mm`.'],
    [{ kind: 'media' }, '4x6in', '4x6in'],
    [{ kind: 'media' }, 'iso_a6_105x148mm', 'iso_a6_105x148mm'],
    [{ kind: 'box' }, '[0mm, 0mm, 4in, 6in]', [0, 0, 4, 6].map((value, index) => ({ value, unit: index < 2 ? 'mm' : 'in' }))],
  ])('%j: %s', (kind, yaml, expected) => {
    expect(read(kind, yaml)).toEqual(expected);
  });

  it.each(['constructor', 'toString', '__proto__', 'hasOwnProperty'])('no media is named by a word of the language: %s', (word) => {
    expect(readMedia(slotFor(word))).toBeUndefined();
  });
});
