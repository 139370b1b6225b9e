/** Where a command works: what it may say, and where its own files lie. */
export interface Desk {
  /** folder of the package, which holds `templates/` and `potentials/` */
  readonly root: string;
  /** of this program */
  readonly version: string;
  /** the product, on standard output: paths written, or JSON */
  print(text: string): void;
  /** anything else a person may want to read, on standard error */
  say(text: string): void;
  /** all of standard input; undefined when it is a keyboard */
  input(): Promise<string | undefined>;
  /** remembers the seed at work, for the report of a fault of ours */
  atSeed(seed: string): void;
}
