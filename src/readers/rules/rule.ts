import type { Reading } from '../read-pdf.ts';

/**
 * A rule of PDF/UA-1 (ISO 14289-1) that a machine can check, named by clause and test number as in the validation profile of the
 * veraPDF consortium.
 */
export interface Rule {
  /** such as `7.2-3` */
  readonly id: string;
  /** what must hold, in a few words */
  readonly says: string;
  /** places where it does not hold, each in words; empty when it does */
  readonly check: (reading: Reading) => readonly string[];
}

export function rule(id: string, says: string, check: Rule['check']): Rule {
  return { id, says, check };
}

/** A rule that is one condition on the whole file. */
export function condition(id: string, says: string, holds: (reading: Reading) => boolean): Rule {
  return { id, says, check: (reading) => (holds(reading) ? [] : [says]) };
}

/** A rule about something our files never hold: it is kept by the thing's absence, and broken, for us, by its presence. */
export function absent(id: string, what: string, found: (reading: Reading) => boolean): Rule {
  return { id, says: `no ${what} in the file`, check: (reading) => (found(reading) ? [`found ${what}`] : []) };
}
