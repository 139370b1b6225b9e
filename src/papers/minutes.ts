/** Preset: minutes allowed for each mark (practice of the trade, no source). */
export const MINUTES_PER_MARK = { tenths: 12 } as const;

/** Whole minutes for a number of marks, rounded up. */
export function minutesFor(marks: number): number {
  return Math.ceil((marks * MINUTES_PER_MARK.tenths) / 10);
}

/** A quarter more time, rounded up to whole minutes. */
export function withExtraTime(minutes: number): number {
  return Math.ceil((minutes * 5) / 4);
}
