import { cpus, platform, release } from 'node:os';
import { parseArgs } from 'node:util';
import { drawInbox, GROUPS, type Group } from './draw.js';
import { measure, type Measured } from './measure.js';
import { locationCost } from './location.js';
import { proofCost, secondOpinionCost, type ProofCost } from './proof.js';

const USAGE = `npm run bench -- [--documents 500] [--jobs 1,2] [--no-split]
  --documents  how many documents to draw and run over (drawn once, kept in the temporary folder)
  --jobs       a run of all documents for each number of workers
  --no-split   leave away the runs over vector and raster documents alone
`;

const { values } = parseArgs({
  options: {
    documents: { type: 'string', default: '500' },
    jobs: { type: 'string', default: '1,2' },
    'no-split': { type: 'boolean', default: false },
    help: { type: 'boolean', default: false },
  },
});

const line = (text = ''): void => void process.stdout.write(`${text}\n`);
const fixed = (value: number, digits = 1): string => value.toFixed(digits);

function tell(run: Measured): void {
  const { labels } = run;
  line();
  line(`${run.groups.join(' and ')} documents, ${run.jobs} worker${run.jobs === 1 ? '' : 's'}`);
  line(`  ${run.documents} documents, ${labels} labels ready, ${run.notReady} items held or failed`);
  line(`  ${fixed(run.wallSeconds)} s in all, ${fixed(labels / run.wallSeconds)} labels/s`);
  line(`  ${fixed(run.firstDocumentSeconds, 2)} s from start to the first document done`);
  line(`  ${run.peakMemoryMb} MB peak memory`);
  line(`  ${fixed(run.cpuMs / labels)} ms CPU a label, start and stacks included; of it by stage:`);
  const stages = Object.entries(run.stageMs).sort(([, a], [, b]) => b - a);
  for (const [stage, ms] of stages) line(`    ${stage.padEnd(12)} ${fixed(ms / labels).padStart(7)} ms`);
  line(`    ${'all stages'.padEnd(12)} ${fixed(stages.reduce((sum, [, ms]) => sum + ms, 0) / labels).padStart(7)} ms`);
}

async function tellProof(): Promise<void> {
  const { plain, maxiCode } = await proofCost(10);
  const told = ({ labels, medianMs }: ProofCost): string =>
    labels === 0 ? 'no such label' : `${fixed(medianMs)} ms CPU in the median of ${labels} labels`;
  line();
  line('proof of a vector label at 203dpi, best of ten: one raster, one decode, measuring');
  line(`  ${told(plain)}`);
  line(`  with a MaxiCode: ${told(maxiCode)}`);
  line(`  a second opinion, where it is asked for: ${told(await secondOpinionCost(3))} more`);
}

async function tellLocation(): Promise<void> {
  const { pages, medianMs } = await locationCost(5);
  line();
  line('finding the labels on a vector page without reading a code, best of five');
  line(`  ${fixed(medianMs)} ms CPU in the median of ${pages} pages`);
}

if (values.help) line(USAGE);
else {
  const documents = Number(values.documents);
  const jobs = values.jobs.split(',').map(Number);
  if (![documents, ...jobs].every((each) => Number.isInteger(each) && each > 0)) throw new Error(USAGE);
  const [cpu] = cpus();
  line(`Node ${process.version}, ${platform()} ${release()}, ${cpus().length} × ${cpu?.model ?? 'unknown'}`);
  await tellLocation();
  await tellProof();
  const folder = await drawInbox(documents, (done) => {
    if (done % 50 === 0) process.stderr.write(`drawn ${done} of ${documents}\n`);
  });
  const all: readonly Group[] = GROUPS;
  if (!values['no-split']) for (const group of GROUPS) tell(await measure(folder, [group], 1));
  for (const count of jobs) tell(await measure(folder, all, count));
}
