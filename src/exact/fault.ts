/** A mistake in what was given to us, told in words a user can act on. Anything else that is thrown is a fault of ours. */
export class Fault extends Error {
  readonly code: string;
  readonly place: Place;
  /**
   * @param code stable id of the kind of fault, such as `bad-formula`
   * @param message what was expected and what was found, one sentence
   * @param place where it stands: file, line and column (1-based), or the text with the span of the fault
   */
  constructor(code: string, message: string, place: Place = {}) {
    super(message);
    this.name = 'Fault';
    this.code = code;
    this.place = place;
  }
}

/** Where a fault stands. `at` and `length` count UTF-16 units of `text`. */
export interface Place {
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
  readonly text?: string;
  readonly at?: number;
  readonly length?: number;
}

/** Several faults found in one reading, reported together. */
export class Faults extends Error {
  readonly faults: readonly Fault[];
  constructor(faults: readonly Fault[]) {
    super(faults.map((fault) => fault.message).join('\n'));
    this.name = 'Faults';
    this.faults = faults;
  }
}
