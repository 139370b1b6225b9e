import { Fault, Faults, type Place } from '../exact/fault.ts';

/** Gathers what is wrong in the files that are read, so that all of it is reported together. */
export class FaultList {
  private readonly found: Fault[] = [];

  add(code: string, message: string, place: Place): void {
    this.found.push(new Fault(code, message, place));
  }

  /** Runs a reader; a fault it throws is kept, placed in the file. @returns undefined when it threw a fault */
  attempt<T>(read: () => T, place: Place): T | undefined {
    try {
      return read();
    } catch (error) {
      if (error instanceof Faults) for (const fault of error.faults) this.keep(fault, place);
      else if (error instanceof Fault) this.keep(error, place);
      else throw error;
      return undefined;
    }
  }

  /** Takes over a fault that was told of a piece of text: the file and line are added, the underlining stays. */
  keep(fault: Fault, place: Place): void {
    this.found.push(new Fault(fault.code, fault.message, { ...fault.place, ...place }));
  }

  /** In order of file and line. */
  all(): readonly Fault[] {
    const key = ({ place }: Fault) => place.file ?? '';
    return [...this.found].sort((one, other) => {
      if (key(one) !== key(other)) return key(one) < key(other) ? -1 : 1;
      return (one.place.line ?? 0) - (other.place.line ?? 0);
    });
  }

  isEmpty(): boolean {
    return this.found.length === 0;
  }

  /** @throws Faults when there are any */
  throwIfAny(): void {
    if (this.found.length > 0) throw new Faults(this.all());
  }
}
