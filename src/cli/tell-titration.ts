import type { Titration, WorkingLine } from '../chemistry/titration.ts';
import { writeEquation } from '../chemistry/write-equation.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import { decimalText, decimalWithFigures } from '../exact/decimal.ts';
import { printNumber } from '../exact/print-number.ts';
import { Rational } from '../exact/rational.ts';
import type { NumberName } from './calculators/quantities.ts';
import { emfText } from './calculators/react-notes.ts';
import type { WorkedTitration } from './calculators/titration.ts';
import { exactText, lines, listed } from './tell.ts';

const HUNDRED = Rational.of(100);
const MORE_THAN_ALL = 'This is more than the sample: a quantity does not belong to the others.';

/** The working line by line, each with its numbers, and the answer to the figures of the least precise quantity. */
export function tellTitration(worked: WorkedTitration, table: string | undefined): string {
  const { answer, working, figures } = worked;
  const value = printNumber(decimalWithFigures(answer.value, figures));
  return lines(
    reactionLines(worked),
    titreLine(worked),
    working.map((line) => lineText(line, worked)),
    answer.what === 'percentage' && answer.value.compare(HUNDRED) > 0 ? MORE_THAN_ALL : undefined,
    '',
    `Answer: ${nameOf(answer.what, worked)} = ${value} ${answer.unit} (${figures} significant figures, as the least precise quantity)`,
    table === undefined ? undefined : `The ratio follows from the couples of the table in force (${table}).`,
  );
}

function reactionLines({ reaction, given }: WorkedTitration): string[] {
  if (!reaction) return [`Ratio: ${given.ratio} of analyte for one of titrant, as given`];
  return [
    `Equation: ${writeEquation(reaction.equation)}`,
    `  (E°cell = ${emfText(reaction.step)})`,
    `  1 mol of ${reaction.titrant} goes with ${exactText(reaction.ratio)} mol of ${reaction.analyte}`,
  ];
}

function titreLine({ titres }: WorkedTitration): string | undefined {
  if (!titres) return undefined;
  const used = titres.used.map((at) => decimalText(titres.all[at]!));
  return `Concordant titres: ${listed(used)} cm^3 (within 0.10 cm^3); mean ${short(titres.mean)} cm^3`;
}

/** To four figures, as working is written; the next line goes on with the exact value. */
const short = (value: Rational): string => printNumber(decimalWithFigures(value, 4));

function lineText(line: WorkingLine, worked: WorkedTitration): string {
  return `${nameOf(line.what, worked)} = ${workingOf(line, worked)} = ${short(line.value)} ${line.unit}`;
}

function nameOf(what: WorkingLine['what'], { reaction, sought }: WorkedTitration): string {
  const titrant = reaction?.titrant ?? 'titrant';
  const analyte = reaction?.analyte ?? 'analyte';
  const wanted = sought ? keyOf(sought) : 'what is sought';
  const names: Record<WorkingLine['what'], string> = {
    'moles-titrant': `n(${titrant})`,
    'moles-analyte': `n(${analyte})`,
    'analyte-concentration': `c(${analyte})`,
    'moles-in-flask': `n(${analyte}) in the whole flask`,
    'original-concentration': `c(${analyte}) before dilution`,
    'moles-sought': `n(${wanted})`,
    mass: `m(${wanted})`,
    percentage: `percentage of ${wanted}`,
    'molar-mass': `M(${wanted})`,
    titre: 'titre',
    'titrant-concentration': `c(${titrant})`,
  };
  return names[what];
}

/** The sum that gives a line, with the numbers before it. */
function workingOf({ what, from }: WorkingLine, worked: WorkedTitration): string {
  const { given, working } = worked;
  const before = working.find((line) => line.what === from[0]);
  const n = before ? short(before.value) : '';
  const backwards = working[0]!.what === 'moles-analyte';
  const number = (name: NumberName) => worked.typed.get(name)?.typed ?? exactOrShort(givenNumber(name, given)!);
  const sums: Record<WorkingLine['what'], () => string> = {
    'moles-titrant': () =>
      backwards ? `${n} ÷ ${number('ratio')}` : `${number('titrant-concentration')} × ${number('titre')} ÷ 1000`,
    'moles-analyte': () =>
      backwards ? `${number('analyte-concentration')} × ${number('aliquot')} ÷ 1000` : `${n} × ${number('ratio')}`,
    'analyte-concentration': () => `${n} × 1000 ÷ ${number('aliquot')}`,
    'moles-in-flask': () => `${n} × ${number('flask')} ÷ ${number('aliquot')}`,
    'original-concentration': () => `${n} × ${number('flask')} ÷ ${number('taken')}`,
    'moles-sought': () => `${n} × ${number('per-analyte')}`,
    mass: () => `${n} × ${number('molar-mass')}`,
    percentage: () => `100 × ${n} ÷ ${number('sample')}`,
    'molar-mass': () => `${number('sample')} ÷ ${n}`,
    titre: () => `${n} × 1000 ÷ ${number('titrant-concentration')}`,
    'titrant-concentration': () => `${n} × 1000 ÷ ${number('titre')}`,
  };
  return sums[what]();
}

/** A number that was computed: the mean titre, the ratio of an equation, a molar mass. */
function givenNumber(name: NumberName, given: Titration): Rational | undefined {
  const camel = name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  return given[camel as keyof Titration];
}

/** In full where that is short; a mean of thirds to four figures. */
function exactOrShort(value: Rational): string {
  const exact = exactText(value);
  return exact.length > 10 ? short(value) : exact;
}
