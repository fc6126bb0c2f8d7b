import { createHash } from 'node:crypto';
import { parentPort } from 'node:worker_threads';
import { readWork } from '../intake/read-work.js';
import type { DocumentResult } from '../recipe/outcome.js';
import { failedDocument } from './failed-document.js';
import type { PoolOrder, SlipOrder, WorkerReport, WorkOrder } from './messages.js';
import { processDocument } from './process-document.js';

// The script of a worker thread: one document after the other, engines stay warm in between.
if (!parentPort) throw new Error('worker: this script only runs as a worker thread');
const port = parentPort;
port.on('message', (order: PoolOrder) => void work(order));

async function work(order: PoolOrder): Promise<void> {
  try {
    report({ type: 'done', result: await (order.type === 'slip' ? slipOf(order) : resultOf(order)), spoiled: false });
  } catch (error) {
    report({ type: 'done', result: failedDocument(bugReason(error)), spoiled: true });
  }
}

/** What sets slips takes a while to load, and many runs have none. */
const slipOf = async (order: SlipOrder): Promise<DocumentResult> => (await import('./process-slip.js')).processSlip(order);

async function resultOf({ item, recipe, media, grid, printer, large, texts }: WorkOrder): Promise<DocumentResult> {
  const read = await readWork(item);
  if (!read.ok) return failedDocument(read.reason);
  if (createHash('sha256').update(read.bytes).digest('hex') !== item.sha256) {
    return failedDocument({
      code: 'batch/changed',
      message: 'the file was changed while the run was on',
      remedy: 'Wait until whatever writes it has finished, then run again.',
    });
  }
  const onPage = (page: number): void => port.postMessage({ type: 'page', page } satisfies WorkerReport);
  return processDocument({ bytes: read.bytes, shownName: item.shownName, recipe, media, grid, printer, large, texts, onPage });
}

/** Hands the bytes over instead of copying them twice; they may be parts of an engine's own memory, which can't be handed over. */
function report(message: WorkerReport & { type: 'done' }): void {
  const { result } = message;
  const pressed = result.pressed?.slice();
  const elsewhere = result.pressedElsewhere && new Map([...result.pressedElsewhere].map(([name, bytes]) => [name, bytes.slice()]));
  const pictures = result.pictures.map((picture) => ({ ...picture, png: picture.png.slice() }));
  const parts = [...(pressed ? [pressed] : []), ...(elsewhere?.values() ?? [])];
  const buffers = [...parts.map(({ buffer }) => buffer), ...pictures.map((picture) => picture.png.buffer)];
  port.postMessage(
    { ...message, result: { ...result, pressed, ...(elsewhere ? { pressedElsewhere: elsewhere } : {}), pictures } },
    buffers,
  );
}

function bugReason(error: unknown): { code: 'batch/internal-error'; message: string; remedy: string } {
  const text = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  const frame = error instanceof Error ? /\bat .*?([\w-]+\.[jt]s:\d+)/.exec(error.stack ?? '')?.[1] : undefined;
  const where = frame === undefined ? '' : `, ${frame}`;
  return {
    code: 'batch/internal-error',
    message: `an error in this program broke off the work on it (${(text.split('\n')[0] ?? '').slice(0, 200)}${where})`,
    remedy: 'The other documents are not concerned. Please report it with this line; the file may need another way meanwhile.',
  };
}
