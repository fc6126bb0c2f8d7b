import { EventEmitter } from 'node:events';
import { expect, it } from 'vitest';
import { watchStop } from '../../src/batch/stop.js';

it('asks to finish at the first request, leaves at the second, and names the first', () => {
  const source = new EventEmitter();
  const told: string[] = [];
  const stop = watchStop(
    source,
    (by) => told.push(`first ${by}`),
    (by) => told.push(`second ${by}`),
  );
  expect(stop.signal.aborted).toBe(false);
  expect(stop.by()).toBeUndefined();
  source.emit('SIGTERM');
  expect(stop.signal.aborted).toBe(true);
  expect(stop.by()).toBe('SIGTERM');
  source.emit('SIGINT');
  expect(told).toEqual(['first SIGTERM', 'second SIGTERM']);
  stop.release();
  expect(source.listenerCount('SIGINT') + source.listenerCount('SIGTERM')).toBe(0);
});
