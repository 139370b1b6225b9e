import type { TitrationSystem } from '../../chemistry/titration-system.ts';
import { type Decimal, parseDecimal } from '../../exact/decimal.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Draws } from '../../random/draws.ts';
import { cautionsFor } from '../cautions.ts';
import { type Ask, family } from '../family.ts';
import type { Caution } from '../question.ts';
import { acidsIn } from './titration-acids.ts';
import { buildTitration } from './titration-concentration-build.ts';
import { drawConcentration, limitsOf } from './titration-limits.ts';
import { type Sides, sidesOf } from './titration-sides.ts';

/** What a draw fixes: the pair, which of the two is unknown, and every printed figure. */
export interface TitrationDraw {
  readonly system: TitrationSystem;
  readonly unknown: 'analyte' | 'titrant';
  /** mol dm⁻³ of the solution that is known */
  readonly concentration: Decimal;
  /** cm³ */
  readonly portion: Decimal;
  readonly titre: Decimal;
  readonly acid: Decimal;
  /** cm³ of stock made up to cm³ of flask */
  readonly dilution?: { readonly sample: Decimal; readonly flask: Decimal };
  readonly cautions: readonly Caution[];
}

export const titrationConcentration = family<TitrationDraw>({
  id: 'titration-concentration',
  title: 'Concentration from a redox titration',
  asksFor: 'an unknown concentration from a mean titre: amount, equation, ratio, concentration and end point',
  topics: ['redox-titration', 'oxidation-and-reduction'],
  strategy: 'amounts through a titration',
  demand: ['half-equations', 'ratio', 'dilution', 'unknown', 'end point'],
  answering: ['written', 'choice'],
  misconceptions: [
    'TI-RATIO-ONE',
    'TI-RATIO-INVERTED',
    'TI-CM3-AS-DM3',
    'TI-FLASK-VOLUME',
    'TI-ALIQUOT-NOT-SCALED',
    'TI-ALIQUOT-INVERTED',
    'TI-WATER-COUNTED',
    'HE-ADD-UNSCALED',
    'HE-SCALE-OWN',
    'HE-H-NOT-CANCELLED',
    'TI-OXALATE-ONE-E',
    'TI-ENDPOINT-REVERSED',
  ],
  draw,
  build: buildTitration,
});

function draw(draws: Draws, tables: Tables, { level, answering }: Ask): TitrationDraw | undefined {
  const system = draws.pick(tables.titrations.filter((each) => level === 'stretch' || each.level === 'core'));
  const sides = sidesOf(system, tables);
  // A choice has one step at each level to tell them apart: at stretch it always goes back to the stock.
  const diluted = level === 'stretch' && (answering === 'choice' || draws.chance(2, 3));
  const unknown = diluted || draws.chance(2, 3) ? 'analyte' : 'titrant';
  const readings = {
    unknown,
    concentration: drawConcentration(draws, sides[unknown === 'analyte' ? 'titrant' : 'analyte'].key),
    portion: parseDecimal(level === 'core' ? '25.0' : draws.pick(['10.0', '20.0', '25.0'])),
    titre: draws.decimal('15.00', '35.00', '0.05', 2),
  } as const;
  const acid = parseDecimal(draws.pick(['15', '20', '30']));
  const dilution = diluted
    ? { sample: parseDecimal(draws.pick(['10.0', '20.0', '25.0'])), flask: parseDecimal(draws.pick(['100.0', '250.0'])) }
    : undefined;
  const hidden = hiddenConcentration(readings, sides);
  const stock = dilution ? hidden.times(dilution.flask.value).over(dilution.sample.value) : undefined;
  if (!isUsual(hidden, stock, limitsOf(sides[unknown].key))) return undefined;
  const cautions = cautionsOf(system, sides, readings, stock ?? hidden, tables);
  return cautions && { system, ...readings, acid, ...(dilution ? { dilution } : {}), cautions };
}

/** The concentration, mol dm⁻³, of the unknown solution as it is titrated. */
function hiddenConcentration({ unknown, concentration, portion, titre }: Readings, { titrant, analyte }: Sides): Rational {
  const analytePerTitrant = analyte.coefficient.over(titrant.coefficient);
  return unknown === 'analyte'
    ? concentration.value.times(titre.value).times(analytePerTitrant).over(portion.value)
    : concentration.value.times(portion.value).over(analytePerTitrant).over(titre.value);
}

type Readings = Pick<TitrationDraw, 'unknown' | 'concentration' | 'portion' | 'titre'>;

function isUsual(hidden: Rational, stock: Rational | undefined, limits: ReturnType<typeof limitsOf>): boolean {
  const within = hidden.compare(Rational.parse(limits.least)) >= 0 && hidden.compare(Rational.parse(limits.most)) <= 0;
  return within && (stock === undefined || stock.compare(Rational.parse(limits.stock)) <= 0);
}

/** Cautions for both solutions and the acids at their concentrations. */
function cautionsOf(
  system: TitrationSystem,
  sides: Sides,
  { unknown, concentration }: Readings,
  strongest: Rational,
  tables: Tables,
): Caution[] | undefined {
  const [known, found] = unknown === 'analyte' ? [sides.titrant, sides.analyte] : [sides.analyte, sides.titrant];
  return cautionsFor(
    [
      { key: known.key, form: 'solution', concentration: concentration.value.toNumber() },
      { key: found.key, form: 'solution', concentration: strongest.toNumber() },
      ...acidsIn(system.acid ?? ''),
    ],
    tables,
  );
}
