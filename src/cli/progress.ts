/** Work shorter than this is done before anyone asks, in milliseconds. */
const PATIENCE = 500;
const BETWEEN = { terminal: 100, file: 2000 };

/** Says how far long work has come. */
export interface Progress {
  /**
   * @param doing what is being done: `Making questions`
   * @param total absent where it cannot be known
   */
  at(doing: string, done: number, total?: number): void;
  /** takes away what stands on a terminal's last line */
  end(): void;
}

/** On a terminal one line is written over and over; elsewhere plain lines, few of them. */
export function progressOn(stream: NodeJS.WriteStream, now: () => number = () => performance.now()): Progress {
  const started = now();
  let said = started + PATIENCE - BETWEEN[stream.isTTY ? 'terminal' : 'file'];
  let width = 0;
  return {
    at: (doing, done, total) => {
      if (now() - said < BETWEEN[stream.isTTY ? 'terminal' : 'file']) return;
      said = now();
      const line = total === undefined ? `${doing}: ${done}` : `${doing}: ${done} of ${total}`;
      stream.write(stream.isTTY ? `\r${line.padEnd(width)}` : `${line}\n`);
      width = line.length;
    },
    end: () => {
      if (stream.isTTY && width > 0) stream.write(`\r${' '.repeat(width)}\r`);
      width = 0;
    },
  };
}

/** Work that says on standard error how far it has come. */
export function withProgress<T>(work: (progress: Progress) => T): T {
  const progress = progressOn(process.stderr);
  try {
    return work(progress);
  } finally {
    progress.end();
  }
}
