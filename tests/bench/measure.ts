import { spawnSync } from 'node:child_process';

/** Median of some repetitions: one slow run on a busy machine does not count. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)]!;
}

/** Wall time of a whole process, in milliseconds: median of `times` runs. */
export function wallTime(args: readonly string[], times: number): number {
  return median(
    Array.from({ length: times }, () => {
      const began = performance.now();
      run(args);
      return performance.now() - began;
    }),
  );
}

/** Says at its end how much memory it held at most. On Linux from the kernel's own mark, since `maxRSS` also counts the parent's share. */
const MARK = `import fs from 'node:fs';
process.on('exit', () => {
  const status = fs.existsSync('/proc/self/status') ? fs.readFileSync('/proc/self/status', 'utf8') : '';
  const kilobytes = /VmHWM:\\s+(\\d+)/.exec(status)?.[1] ?? process.resourceUsage().maxRSS;
  fs.writeSync(2, '\\npeak ' + kilobytes + '\\n');
});`;

/** Peak memory of a whole process, in megabytes: median of `times` runs. */
export function peakMemory(args: readonly string[], times: number): number {
  const hook = `data:text/javascript,${encodeURIComponent(MARK)}`;
  const peaks = Array.from({ length: times }, () => Number(/\npeak (\d+)\n/.exec(run(['--import', hook, ...args]))![1]));
  return median(peaks) / 1024;
}

/** @returns what the process wrote on standard error */
function run(args: readonly string[]): string {
  const { status, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with status ${status}: ${stderr}`);
  return stderr;
}

/** Time of one call once the machine is warm, in milliseconds: median of the second half of the rounds. */
export function warmTime(work: () => void, rounds: number): number {
  return warmTimes(rounds, work)[0]!;
}

/** The same for several kinds of work in turns, so that a busy machine slows them all alike. */
export function warmTimes(rounds: number, ...works: readonly (() => void)[]): number[] {
  const taken = works.map((): number[] => []);
  for (let round = 0; round < rounds; round += 1) {
    works.forEach((work, at) => {
      const began = performance.now();
      work();
      taken[at]!.push(performance.now() - began);
    });
  }
  return taken.map((all) => median(all.slice(Math.floor(rounds / 2))));
}

/** A row of the printed table. */
export function row(what: string, value: string, beside = ''): string {
  return `  ${what.padEnd(52)}${value.padStart(12)}  ${beside}`.trimEnd();
}

export const ms = (time: number): string => `${time.toFixed(time < 20 ? 2 : 0)} ms`;
export const mb = (size: number): string => `${size.toFixed(0)} MB`;
export const times = (value: number, base: number): string => `${(value / base).toFixed(2)} ×`;
