import { describe, expect, it } from 'vitest';
import type { Couple } from '../../src/chemistry/couple.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { sameEquation } from '../../src/chemistry/terms.ts';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { parseDecimal } from '../../src/exact/decimal.ts';
import { buildPrediction } from '../../src/questions/families/predict-reaction-build.ts';
import { numberOf } from '../../src/questions/number-of.ts';
import { solve } from '../../src/questions/solve.ts';
import { keyAt } from '../../src/questions/statement-step.ts';
import { asking, wordsOf } from '../families/reading.ts';
import { tables } from '../support/data.ts';
import { casesOf, type WorkedCase } from './cases.ts';

/** The couples of the cases, as the source writes them, in our notation. */
const IDS: Readonly<Record<string, string>> = {
  'Pb2+/Pb': 'Pb^2+/Pb',
  'Cu2+/Cu': 'Cu^2+/Cu',
  'Br2(aq)/Br-': 'Br2/Br^-',
  'I2/I-': 'I2/I^-',
  'Sn2+/Sn': 'Sn^2+/Sn',
  'Mn2+/Mn': 'Mn^2+/Mn',
  'Au3+/Au': 'Au^3+/Au',
  'Fe3+/Fe2+': 'Fe^3+/Fe^2+',
  'Al3+/Al': 'Al^3+/Al',
  'Fe2+/Fe': 'Fe^2+/Fe',
  'O2/H2O': 'O2/H2O',
};

interface HalfCell {
  readonly couple: string;
  readonly E: number;
}

/** A couple of ours with the potential that the source gives, to the two decimals that a sheet prints. */
function coupleOf({ couple, E }: HalfCell): Couple {
  return { ...tables.couple(IDS[couple]!), printed: parseDecimal(E.toFixed(2)) };
}

interface Pair {
  readonly cathode: HalfCell;
  readonly anode: HalfCell;
  readonly reaction: string;
}
interface Verdict {
  readonly E_cell_V: number;
  readonly spontaneous: boolean;
}
/** Some cases give other things than two half-cells. */
const isOurs = ({ given }: WorkedCase<Partial<Pair>>) => [given.cathode, given.anode].every((half) => half && half.couple in IDS);
/** OpenStax Chemistry 2e, chapter 17; each case names its place. */
const cases = [...casesOf<Pair, Verdict>('feasibility'), ...casesOf<Pair, Verdict>('cell-emf')].filter(isOurs);

describe('predictions from two published potentials', () => {
  it.each(cases)('$id: $source', ({ given, answer }) => {
    const [first, second] = [
      { couple: coupleOf(given.cathode), form: 'oxidised' },
      { couple: coupleOf(given.anode), form: 'reduced' },
    ] as const;
    const { item } = buildPrediction(
      { shape: 'pair', first, second, medium: 'neutral' },
      tables,
      asking('core'),
      wordsOf('predict-reaction'),
    );
    const values = solve(item);
    expect(numberOf(values, 'emf').toNumber().toFixed(2)).toBe(answer.E_cell_V.toFixed(2));
    expect(keyAt(values, 'verdict')).toBe(answer.spontaneous ? 'yes' : 'no');
    const equation = values.get('equation');
    if (equation?.kind !== 'equation') throw new Error('expected an equation');
    const published = parseEquation(given.reaction);
    // What is not feasible runs the other way: our equation is then the published one turned round.
    const expected = answer.spontaneous ? published : { left: published.right, right: published.left };
    expect(sameEquation(equation.equation, expected), writeEquation(equation.equation)).toBe(true);
  });

  it('number nine', () => {
    expect(cases).toHaveLength(9);
  });
});
