import { imbalances } from '../chemistry/conservation.ts';
import { electronsIn } from '../chemistry/half-equations.ts';
import { everyToken } from '../reading/tokens.ts';
import { equationProblems } from './answers.ts';
import { type Audited, at } from './place.ts';

/** Every equation that the sheet prints balances; half-equations with a potential are reductions, in lowest terms, reversible. */
export function auditPrintedEquations(audited: Audited): void {
  const { question, ledger } = audited;
  const place = at(audited, String(question.number));
  const rows = question.tables.flatMap((table) =>
    table.rows.map((cells) => ({ cells, isPotential: table.header.some((each) => each.includes('E°')) })),
  );
  for (const { cells, isPotential } of rows) {
    for (const { equation } of everyToken(cells.flat(), 'equation')) {
      ledger.noteAll(place, 'equation on the sheet', [
        ...equationProblems(equation),
        ...(isPotential && electronsIn(equation).side() <= 0 ? [`${equation.text} is no reduction`] : []),
        ...(isPotential && equation.arrow !== 'reversible' ? [`${equation.text} has no reversible arrow`] : []),
      ]);
    }
  }
  const prose = [...question.stem.flat(), ...question.parts.flatMap(({ prose: own }) => own.flat())];
  for (const { equation } of everyToken(prose, 'equation')) {
    ledger.noteAll(
      place,
      'equation on the sheet',
      imbalances(equation).map((each) => `${equation.text} does not balance: ${each}`),
    );
  }
}
