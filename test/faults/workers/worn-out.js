// A worker that only its first document survives: whatever comes second dies although nothing is wrong with it.
import { finish } from './canned.js';
import { parentPort } from 'node:worker_threads';

let served = 0;
parentPort.on('message', () => {
  served += 1;
  if (served > 1) throw new Error('the engine was left in a bad way');
  finish();
});
