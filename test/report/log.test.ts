import { expect, it } from 'vitest';
import { runLog } from '../../src/report/log.js';

it('keeps one JSON line an event, with its time', () => {
  const log = runLog();
  log.write({ type: 'stacking', pages: 2 });
  log.write({ type: 'talk', text: 'a library\nsays hello\n' });
  const lines = log.text().trimEnd().split('\n');
  expect(lines).toHaveLength(2);
  expect(JSON.parse(lines[0] ?? '')).toMatchObject({ level: 30, msg: 'stacking', pages: 2 });
  expect(JSON.parse(lines[1] ?? '')).toMatchObject({ msg: 'talk', text: 'a library\nsays hello\n' });
  expect((JSON.parse(lines[0] ?? '') as { time: string }).time).toMatch(/^\d{4}-\d\d-\d\dT/);
});
