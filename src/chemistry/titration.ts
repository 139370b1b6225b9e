import { Fault } from '../exact/fault.ts';
import { Rational } from '../exact/rational.ts';
import { concentrationOf, molesIn } from './amounts.ts';

/** What is known of a titration. Everything is exact; what is absent is not known. */
export interface Titration {
  /** moles of analyte that go with one of titrant */
  readonly ratio: Rational;
  /** mol dm⁻³ */
  readonly titrantConcentration?: Rational;
  /** cm³, mean of the concordant titres */
  readonly titre?: Rational;
  /** cm³ of analyte in the conical flask */
  readonly aliquot?: Rational;
  /** mol dm⁻³ in the aliquot */
  readonly analyteConcentration?: Rational;
  /** cm³ that the aliquot was taken from */
  readonly flask?: Rational;
  /** cm³ of the original solution that was made up in the flask */
  readonly taken?: Rational;
  /** g mol⁻¹ of what is sought */
  readonly molarMass?: Rational;
  /** how many of what is sought stand for one of the analyte: 2 for Fe in Fe₂O₃ is ½ */
  readonly perAnalyte?: Rational;
  /** g of sample dissolved in the flask */
  readonly sample?: Rational;
}

/** One line of the working. */
export interface WorkingLine {
  readonly what:
    | 'moles-titrant'
    | 'moles-analyte'
    | 'analyte-concentration'
    | 'moles-in-flask'
    | 'original-concentration'
    | 'moles-sought'
    | 'mass'
    | 'percentage'
    | 'molar-mass'
    | 'titre'
    | 'titrant-concentration';
  readonly value: Rational;
  readonly unit: 'mol' | 'mol dm^-3' | 'g' | '%' | 'g mol^-1' | 'cm^3';
  /** what was computed, with the numbers: `0.0200 × 23.40 ÷ 1000` is left to the printer */
  readonly from: readonly WorkingLine['what'][];
}

/** Everything that follows from what is known, in the order a pupil works; the last line is the furthest that can be reached. */
export interface TitrationAnswer {
  readonly answer: WorkingLine;
  readonly working: readonly WorkingLine[];
}

/**
 * Works a titration out as far as the data go: forwards from the titre, or backwards to the titre or to the titrant's
 * concentration when the analyte's is known.
 * @throws Fault `not-enough` when nothing follows, `bad-quantity` for a quantity of zero or less
 */
export function workTitration(given: Titration): TitrationAnswer {
  for (const [name, value] of Object.entries(given)) {
    if ((value as Rational).sign() <= 0) throw new Fault('bad-quantity', `expected ${name} above zero`, {});
  }
  const working = given.titre && given.titrantConcentration ? forwards(given) : backwards(given);
  const answer = working.at(-1);
  if (!answer)
    throw new Fault('not-enough', 'expected a titre with the titrant’s concentration, or an aliquot with the analyte’s', {});
  return { answer, working };
}

function line(
  what: WorkingLine['what'],
  value: Rational,
  unit: WorkingLine['unit'],
  ...from: WorkingLine['what'][]
): WorkingLine {
  return { what, value, unit, from };
}

function forwards(given: Titration): WorkingLine[] {
  const titrant = molesIn(given.titrantConcentration!, given.titre!);
  const analyte = titrant.times(given.ratio);
  const working = [line('moles-titrant', titrant, 'mol'), line('moles-analyte', analyte, 'mol', 'moles-titrant')];
  if (given.aliquot && !(given.sample || given.molarMass)) {
    const concentration = concentrationOf(analyte, given.aliquot);
    working.push(line('analyte-concentration', concentration, 'mol dm^-3', 'moles-analyte'));
    if (given.flask && given.taken) {
      const original = concentration.times(given.flask).over(given.taken);
      working.push(line('original-concentration', original, 'mol dm^-3', 'analyte-concentration'));
    }
    return working;
  }
  return [...working, ...massLines(given, analyte)];
}

/** Scales the aliquot up to the flask, then to moles, mass and percentage of what is sought. */
function massLines(given: Titration, analyte: Rational): WorkingLine[] {
  const working: WorkingLine[] = [];
  let moles = analyte;
  let last: WorkingLine['what'] = 'moles-analyte';
  const push = (what: WorkingLine['what'], value: Rational, unit: WorkingLine['unit']): void => {
    working.push(line(what, value, unit, last));
    last = what;
  };
  if (given.flask && given.aliquot) {
    moles = moles.times(given.flask).over(given.aliquot);
    push('moles-in-flask', moles, 'mol');
  }
  if (given.perAnalyte && !given.perAnalyte.equals(Rational.one)) {
    moles = moles.times(given.perAnalyte);
    push('moles-sought', moles, 'mol');
  }
  if (given.molarMass) {
    const mass = moles.times(given.molarMass);
    push('mass', mass, 'g');
    if (given.sample) push('percentage', mass.times(Rational.of(100)).over(given.sample), '%');
  } else if (given.sample) {
    push('molar-mass', given.sample.over(moles), 'g mol^-1');
  }
  return working;
}

function backwards(given: Titration): WorkingLine[] {
  if (!given.analyteConcentration || !given.aliquot) return [];
  const analyte = molesIn(given.analyteConcentration, given.aliquot);
  const titrant = analyte.over(given.ratio);
  const working = [line('moles-analyte', analyte, 'mol'), line('moles-titrant', titrant, 'mol', 'moles-analyte')];
  if (given.titrantConcentration) {
    working.push(line('titre', titrant.times(Rational.of(1000)).over(given.titrantConcentration), 'cm^3', 'moles-titrant'));
  } else if (given.titre) {
    working.push(line('titrant-concentration', concentrationOf(titrant, given.titre), 'mol dm^-3', 'moles-titrant'));
  }
  return working;
}
