/** Where something stands: family and answering, question and part. */
export interface Place {
  readonly family: string;
  readonly answering: 'written' | 'choice' | 'paper';
  readonly code: string;
  readonly label: string;
}

export interface Finding {
  readonly place: Place;
  readonly kind: string;
  readonly problem: string;
}

/** What became of one computed point: it holds, it does not, or it could not be reached for a reason. */
export type Outcome = 'holds' | { readonly problem: string } | { readonly unreached: string };

interface Count {
  computed: number;
  audited: number;
}

/** Everything that an audit has looked at. Counts can be sent between threads and added up. */
export class Ledger {
  readonly counts: Record<string, Count> = {};
  readonly unreached: Record<string, number> = {};
  readonly findings: Finding[] = [];
  /** how often each kind of finding was met; only the first of each are kept in full */
  readonly met: Record<string, number> = {};
  questions = 0;

  note(place: Place, kind: string, outcome: Outcome): void {
    const key = `${place.family}\t${place.answering}\t${kind}`;
    this.counts[key] ??= { computed: 0, audited: 0 };
    this.counts[key].computed += 1;
    if (typeof outcome === 'object' && 'unreached' in outcome) {
      const reason = `${key}\t${outcome.unreached}`;
      this.unreached[reason] = (this.unreached[reason] ?? 0) + 1;
      return;
    }
    this.counts[key].audited += 1;
    if (outcome !== 'holds') this.find({ place, kind, problem: outcome.problem });
  }

  /** One point for each problem; one that holds when there is none. */
  noteAll(place: Place, kind: string, problems: readonly string[]): void {
    if (problems.length === 0) this.note(place, kind, 'holds');
    for (const problem of problems) this.note(place, kind, { problem });
  }

  find(finding: Finding): void {
    const key = `${finding.place.family} ${finding.place.answering}: ${finding.kind}`;
    this.met[key] = (this.met[key] ?? 0) + 1;
    if (this.met[key] <= 20) this.findings.push(finding);
  }

  /** Takes over what another has counted. */
  add(other: Pick<Ledger, 'counts' | 'unreached' | 'findings' | 'met' | 'questions'>): void {
    for (const [key, { computed, audited }] of Object.entries(other.counts)) {
      this.counts[key] ??= { computed: 0, audited: 0 };
      this.counts[key].computed += computed;
      this.counts[key].audited += audited;
    }
    for (const [key, times] of Object.entries(other.unreached)) this.unreached[key] = (this.unreached[key] ?? 0) + times;
    for (const [key, times] of Object.entries(other.met)) this.met[key] = (this.met[key] ?? 0) + times;
    this.findings.push(...other.findings);
    this.questions += other.questions;
  }
}
