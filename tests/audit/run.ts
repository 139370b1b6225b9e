import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { auditPaper } from './audit.ts';
import { Ledger } from './engine/ledger.ts';
import { kitchenIn } from './make/kitchen.ts';
import { askFor, chosenDocuments, PER_PAPER, paperDocuments } from './make/papers.ts';
import { reportOf } from './report.ts';

/** Run by `npm run audit -- [questions] [first paper]`; bundled into `.build/`, hence one folder below the package. Exits with 1 on any finding. */
const root = fileURLToPath(new URL('..', import.meta.url));

/** Papers a thread makes and audits: every so many-th, from one. */
interface Share {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

function auditShare({ from, to, step }: Share): Ledger {
  const kitchen = kitchenIn(root);
  const ledger = new Ledger();
  for (let paper = from; paper < to; paper += step) {
    // Most papers take every family in turn; every tenth is one that the program chooses, whose questions must also fit together.
    const isChosen = paper % 10 === 9;
    auditPaper(isChosen ? chosenDocuments(paper, kitchen) : paperDocuments(askFor(paper), kitchen), ledger, isChosen);
  }
  return ledger;
}

function inThread(share: Share): Promise<Ledger> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(fileURLToPath(import.meta.url), { workerData: share });
    worker.once('message', resolve);
    worker.once('error', reject);
  });
}

async function main(questions: number, first: number): Promise<void> {
  const began = performance.now();
  const threads = Math.min(availableParallelism(), 8);
  const to = first + Math.ceil(questions / PER_PAPER);
  const shares = Array.from({ length: threads }, (_, at) => inThread({ from: first + at, to, step: threads }));
  const ledger = new Ledger();
  for (const part of await Promise.all(shares)) ledger.add(part);
  process.stdout.write(reportOf(ledger, (performance.now() - began) / 1000));
  process.exitCode = ledger.findings.length > 0 ? 1 : 0;
}

if (isMainThread) {
  const [questions = '20000', first = '0'] = process.argv.slice(2);
  await main(Number(questions), Number(first));
} else parentPort?.postMessage(auditShare(workerData as Share));
