import { Fault } from '../exact/fault.ts';
import { itemMarks } from '../questions/part-marks.ts';
import type { Question } from '../questions/question.ts';
import { candidates, type Kitchen } from './candidates.ts';
import { minutesFor } from './minutes.ts';

/** More marks than this on one sheet is taken for a slip of the finger. */
const MOST_MARKS = 400;
const MOST_QUESTIONS = 100;

/**
 * Chooses the questions of a paper.
 * @param progress called after each question that is made
 * @throws Fault `impossible-length` saying what can be had
 */
export function choose(kitchen: Kitchen, progress: (done: number) => void = () => {}): Question[] {
  const { unit, count } = kitchen.request.length;
  const most = unit === 'questions' ? MOST_QUESTIONS : MOST_MARKS;
  if (!Number.isInteger(count) || count < 1 || count > most) {
    throw new Fault('impossible-length', `expected between 1 and ${most} ${unit}, found ${count}`);
  }
  if (unit === 'questions') return chooseByNumber(kitchen, count, progress);
  return unit === 'marks' ? chooseByMarks(kitchen, [count], progress) : chooseByMarks(kitchen, marksIn(count), progress);
}

function chooseByNumber(kitchen: Kitchen, count: number, progress: (done: number) => void): Question[] {
  const chosen: Question[] = [];
  for (const question of candidates(kitchen)) {
    chosen.push(question);
    progress(chosen.length);
    if (chosen.length === count) return chosen;
  }
  throw new Fault(
    'impossible-length',
    `these families and settings give ${chosen.length} different questions, ${count} were asked; ask for fewer or allow more families`,
  );
}

/** Marks that fill a number of minutes without going over, the fullest first; down to nine tenths of the time. */
function marksIn(minutes: number): number[] {
  const fits = Array.from({ length: MOST_MARKS }, (_, at) => at + 1).filter(
    (marks) => minutesFor(marks) <= minutes && minutesFor(marks) >= minutes * 0.9,
  );
  return fits.reverse();
}

/** The first of the wanted totals that some set of candidates adds up to; earlier candidates are preferred. */
function chooseByMarks(kitchen: Kitchen, wanted: readonly number[], progress: (done: number) => void): Question[] {
  const most = Math.max(...wanted, 0);
  const sets = new Map<number, readonly Question[]>([[0, []]]);
  let spare = 0;
  let made = 0;
  for (const question of candidates(kitchen)) {
    made += 1;
    progress(made);
    for (const [sum, set] of [...sets]) {
      const total = sum + itemMarks(question);
      if (total <= most + 10 && !sets.has(total)) sets.set(total, [...set, question]);
    }
    const first = wanted.find((marks) => sets.has(marks));
    // Some more candidates are looked at before a less full total is taken.
    if (first !== undefined && (first === wanted[0] || spare > 6)) return [...sets.get(first)!];
    if (first !== undefined) spare += 1;
    if (made * 2 > most + 40) break;
  }
  const first = wanted.find((marks) => sets.has(marks));
  if (first !== undefined) return [...sets.get(first)!];
  const near = [...sets.keys()].filter((marks) => marks > 0).sort((a, b) => Math.abs(a - most) - Math.abs(b - most));
  const offered = near
    .slice(0, 3)
    .sort((a, b) => a - b)
    .map((marks) => `${marks} marks (${minutesFor(marks)} minutes)`);
  throw new Fault(
    'impossible-length',
    `these families make no set of ${wanted.length === 1 ? `${most} marks` : 'that many minutes'}; nearest are ${offered.join(', ')}`,
  );
}
