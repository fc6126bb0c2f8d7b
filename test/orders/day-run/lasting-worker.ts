import { BroadcastChannel, Worker } from 'node:worker_threads';
import { workerScript } from '../../../src/batch/pool.js';
import type { PoolOrder, WorkerReport } from '../../../src/batch/messages.js';

const CHANNEL = 'slipyard lasting worker';

const RELAY_SCRIPT = `
import { parentPort } from 'node:worker_threads';
const channel = new BroadcastChannel('${CHANNEL}');
channel.onmessage = ({ data }) => { if (data.report) parentPort.postMessage(data.report); };
parentPort.on('message', (order) => channel.postMessage({ order }));
`;

/** For `run`, with one job: its worker has the lasting one do what it is asked for. */
export const RELAY = { script: new URL(`data:text/javascript,${encodeURIComponent(RELAY_SCRIPT)}`) };

/** Starts the built worker once for many runs, one after the other: loading the engines anew costs more than a small day. Gives what ends it. */
export function lastingWorker(): () => Promise<unknown> {
  const worker = new Worker(workerScript());
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = (event) => {
    const { order } = (event as { data: { order?: PoolOrder } }).data;
    if (order) worker.postMessage(order);
  };
  worker.on('message', (report: WorkerReport) => channel.postMessage({ report }));
  return () => {
    channel.close();
    return worker.terminate();
  };
}
