import type { Ledger } from './engine/ledger.ts';

/** Audited ÷ computed points by family, form of answer and kind of point; reasons for what is not reached; findings. */
export function reportOf(ledger: Ledger, seconds: number): string {
  const perSecond = Math.round(ledger.questions / seconds);
  return [
    `${ledger.questions} questions in ${Math.round(seconds)} s (${perSecond} a second)`,
    '',
    ...shares(ledger),
    '',
    ...kinds(ledger),
    ...reasons(ledger),
    ...findings(ledger),
    '',
  ].join('\n');
}

const percent = (audited: number, computed: number): string => {
  // Only what is whole is called whole: 99.96 % is not printed as 100 %.
  const share = audited === computed ? 100 : Math.min(99.9, Math.round((audited / computed) * 1000) / 10);
  return `${share} %`.padStart(7);
};

function shares({ counts }: Ledger): string[] {
  const sums = new Map<string, { audited: number; computed: number }>();
  for (const [key, { audited, computed }] of Object.entries(counts)) {
    const [family = '', answering = ''] = key.split('\t');
    const name = `${family.padEnd(24)} ${answering.padEnd(8)}`;
    const sum = sums.get(name) ?? { audited: 0, computed: 0 };
    sums.set(name, { audited: sum.audited + audited, computed: sum.computed + computed });
  }
  return [...sums]
    .sort()
    .map(([name, { audited, computed }]) => `${name} ${percent(audited, computed)}  ${audited} of ${computed} points`);
}

function kinds({ counts }: Ledger): string[] {
  const sums = new Map<string, { audited: number; computed: number }>();
  for (const [key, { audited, computed }] of Object.entries(counts)) {
    const kind = key.split('\t')[2] ?? '';
    const sum = sums.get(kind) ?? { audited: 0, computed: 0 };
    sums.set(kind, { audited: sum.audited + audited, computed: sum.computed + computed });
  }
  return [...sums]
    .sort()
    .map(([kind, { audited, computed }]) => `  ${kind.padEnd(30)} ${percent(audited, computed)}  ${audited} of ${computed}`);
}

function reasons({ unreached }: Ledger): string[] {
  const lines = Object.entries(unreached).sort(([, one], [, other]) => other - one);
  return lines.length === 0
    ? []
    : ['', 'Not reached', ...lines.map(([key, times]) => `  ${times} × ${key.split('\t').join(' · ')}`)];
}

function findings({ findings: found, met }: Ledger): string[] {
  if (found.length === 0) return ['', 'No findings'];
  const shown = found
    .slice(0, 60)
    .map(({ place, kind, problem }) => `  ${place.family} ${place.code} ${place.label}, ${kind}: ${problem}`);
  return ['', 'Findings', ...Object.entries(met).map(([key, times]) => `  ${times} × ${key}`), ...shown];
}
