import { describe, expect, it } from 'vitest';
import { cell, standardEmf } from '../../src/chemistry/cell.ts';
import { cellNotation, notationText } from '../../src/chemistry/cell-notation.ts';
import { combine } from '../../src/chemistry/combine.ts';
import type { Couple } from '../../src/chemistry/couple.ts';
import { halfOf, parseCellNotation } from '../../src/chemistry/parse-cell-notation.ts';
import { parseEquation } from '../../src/chemistry/parse-equation.ts';
import { ownCouple, parseHalfCell } from '../../src/chemistry/parse-half-cell.ts';
import { lowestTerms, sameEquation } from '../../src/chemistry/terms.ts';
import { writeEquation } from '../../src/chemistry/write-equation.ts';
import { tables } from '../chemistry/tables.ts';
import { expectPrinted, printedOf } from './cases.ts';
import { checkedCases } from './left-out.ts';

/** Couples as the sources abbreviate them, in our notation. */
const HALF_CELLS: Readonly<Record<string, string>> = {
  'Sn2+/Sn': 'Sn^2+/Sn',
  'Mn2+/Mn': 'Mn^2+/Mn',
  'Au3+/Au': 'Au^3+/Au',
  'Fe3+/Fe2+': 'Fe^3+/Fe^2+',
  'Fe2+/Fe': 'Fe^2+/Fe',
  'Cu2+/Cu': 'Cu^2+/Cu',
  'Pb2+/Pb': 'Pb^2+/Pb',
  'Ag+/Ag': 'Ag^+/Ag',
  'Al3+/Al': 'Al^3+/Al',
  'HgS/Hg,S2-': 'HgS + 2e^- <=> Hg + S^2-',
  'Br2(aq)/Br-': 'Br2/Br^-',
  'I2/I-': 'I2/I^-',
  'O2/H2O': 'O2/H2O',
  'H2O/H2,OH-': 'H2O/H2@alkali',
  'Cl2/Cl-': 'Cl2/Cl^-',
  '[Co(H2O)6]3+/2+': '[Co(H2O)6]^3+/[Co(H2O)6]^2+',
  '[Co(NH3)6]3+/2+': '[Co(NH3)6]^3+/[Co(NH3)6]^2+',
};

/** A value such as 0.34 as the decimal that the source gives. */
const coupleOf = ({ couple, E }: { couple: string; E: number }): Couple => ownCouple(parseHalfCell(`${HALF_CELLS[couple]}=${E}`));

interface Half {
  readonly couple: string;
  readonly E: number;
}
interface Pair {
  readonly cathode?: Half;
  readonly anode?: Half;
  readonly oxidant?: Half;
  readonly reductant?: Half;
  readonly reaction?: string;
  readonly pair?: Readonly<Record<string, number>>;
}
interface Verdict {
  readonly spontaneous?: boolean;
  readonly corrodes?: string;
}
interface PowerCell {
  readonly cathode?: string;
  readonly anode_as_reduction?: string;
  readonly E_cathode_V?: number;
  readonly E_anode_V?: number;
}
interface PowerAnswer {
  readonly cathode?: string;
  readonly anode?: string;
  readonly overall?: string;
  readonly E_V: number | string;
}

describe('published e.m.f.s and feasibilities', () => {
  const cases = [...checkedCases<Pair, Verdict>('cell-emf'), ...checkedCases<Pair, Verdict>('feasibility')].filter(
    (each) => each.given.pair === undefined,
  );
  it.each(cases)('are ours: $id, $source', (each) => {
    const { given, answer } = each;
    const positive = coupleOf((given.cathode ?? given.oxidant)!);
    const negative = coupleOf((given.anode ?? given.reductant)!);
    const found = cell(negative, positive, 'stored');
    expectPrinted(found.emf.value, printedOf(each, 'E_cell_V')[0]);
    expect(found.feasible).toBe(answer.spontaneous);
    if (given.reaction) expect(sameEquation(found.combined.equation, lowestTerms(parseEquation(given.reaction)))).toBe(true);
  });
  it.each(checkedCases<Pair, Verdict>('feasibility').filter((each) => each.given.pair))(
    'tell which metal corrodes: $id, $source',
    ({ given, answer }) => {
      const [[one, low], [other, high]] = Object.entries(given.pair!) as [[string, number], [string, number]];
      const [a, b] = [
        ownCouple(parseHalfCell(`${one}^2+/${one}=${low}`)),
        ownCouple(parseHalfCell(`${other}^2+/${other}=${high}`)),
      ];
      const corrodes = cell(a, b, 'stored').feasible ? a : b;
      expect(corrodes.reducedKey).toBe(answer.corrodes);
    },
  );
});

describe('published cell representations', () => {
  const tidy = (text: string) => text.replace('||', '‖');
  it.each(checkedCases<unknown, { readonly notation: string; readonly cell_reaction: string }>('cell-notation'))(
    'are ours, and read back to their reaction: $id, $source',
    ({ answer }) => {
      const read = parseCellNotation(answer.notation);
      const [negative, positive] = [halfOf(read.left), halfOf(read.right)];
      expect(sameEquation(combine(positive, negative).equation, parseEquation(answer.cell_reaction))).toBe(true);
      const known = (half: typeof negative) => tables.couples.find((couple) => sameEquation(couple.half, half))!;
      expect(cellNotation(known(negative), known(positive), tables.speciesOf).text).toBe(tidy(answer.notation));
      expect(
        notationText(
          { phases: read.left, inert: false },
          { phases: read.right.toReversed().map((phase) => phase.toReversed()), inert: false },
        ),
      ).toBe(tidy(answer.notation));
    },
  );
});

describe('published power cells', () => {
  it.each(checkedCases<PowerCell, PowerAnswer>('power-cell'))('have our overall equations and e.m.f.: $id, $source', (each) => {
    const { given, answer } = each;
    const reduction = parseEquation((answer.cathode ?? given.cathode)!);
    const oxidation = answer.anode ? parseEquation(answer.anode) : undefined;
    const reverse = oxidation ? { left: oxidation.right, right: oxidation.left } : parseEquation(given.anode_as_reduction!);
    const half = (equation: typeof reduction) => {
      const whole = lowestTerms(equation);
      return ownCouple(parseHalfCell(`${writeEquation(whole, '<=>')} = 0`)).half;
    };
    const { equation } = combine(half(reduction), half(reverse));
    if (answer.overall) expect(sameEquation(equation, parseEquation(answer.overall))).toBe(true);
    if (given.E_cathode_V !== undefined && given.E_anode_V !== undefined) {
      const couple = (value: number) => ownCouple(parseHalfCell(`Ag^+/Ag=${value}`));
      expectPrinted(standardEmf(couple(given.E_anode_V), couple(given.E_cathode_V), 'stored').value, answer.E_V);
    }
  });
});
