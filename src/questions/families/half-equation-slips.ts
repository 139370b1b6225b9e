import { coefficientOf } from '../../chemistry/terms.ts';
import type { Words } from '../../document/words.ts';
import { Rational } from '../../exact/rational.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Ask } from '../family.ts';
import { numberOf } from '../number-of.ts';
import { numberValue } from '../number-step.ts';
import type { Level, Slip } from '../question.ts';
import { slipMaker } from '../slip.ts';
import { wordsValue } from '../statement-step.ts';
import type { NodeId, Value } from '../value.ts';
import type { HalfDraw } from './half-equation.ts';
import { balanceValue } from './half-equation-charge.ts';
import type { HalfPlan } from './half-equation-plan.ts';
import { changeIn, oneAtom, unitsOf } from './half-equation-steps.ts';
import { temptsToOxygen } from './half-equation-write.ts';

type Maker = ReturnType<typeof slipMaker>;

/** Slips, the most common first; those of the main half-equation are the options of a choice. */
export function halfSlips(
  { main, partner }: HalfDraw,
  { level, answering }: Pick<Ask, 'level' | 'answering'>,
  tables: Tables,
  words: Words,
): Slip[] {
  // Where the change of one atom has a mark of its own, it is told that this can stand.
  const slip = slipMaker(tables, words, { hasChangeMark: level === 'core' && answering === 'written' });
  return [
    ...mainSlips(main, level, slip),
    ...partnerSlips(partner, slip),
    ...(level === 'core'
      ? []
      : [
          slip(
            'RX-AGENT-SWAP',
            'agent',
            (): Value => ({ kind: 'species', formula: main.isReduction ? partner.subject : main.subject }),
          ),
        ]),
  ];
}

const plain = (value: number): Value => numberValue(Rational.of(value), { unit: '' });

/** Who counts electrons without oxidation numbers earns neither their change nor what it is multiplied by; the same figure from one atom's electrons has the benefit of the doubt. */
const skipping = (slip: Slip): Slip => ({ ...slip, skips: ['change'] });

function mainSlips(main: HalfPlan, level: Level, slip: Maker): Slip[] {
  const { subject, product } = main;
  const byCharge = Math.abs(subject.charge - product.charge);
  return [
    slip('HE-ELECTRON-SIDE', 'charge', () => balanceValue('wrong side')),
    skipping(
      slip(
        'RX-ION-CHARGE-CHANGE',
        'electrons',
        () => plain(byCharge),
        () => byCharge > 0 && byCharge !== oneAtom(main),
      ),
    ),
    slip('HE-ELECTRONS-PER-ATOM', 'electrons', (values) => numberValue(numberOf(values, 'change'), { unit: '' })),
    ...makeUpSlips(main, 'makeup', slip),
    skipping(
      slip(
        'RX-OXIDE-TRANSFER',
        'electrons',
        () => plain(oxideElectrons(main)),
        () => oxideElectrons(main) > 0 && oxideElectrons(main) !== oneAtom(main),
      ),
    ),
    slip(
      'ON-PEROXIDE',
      'change',
      () => plain(2),
      () => isPeroxideOxidised(main),
    ),
    // Core has asked for their number already; at stretch nothing shows that they were counted.
    level === 'core'
      ? slip('HE-ELECTRONS-MISSING', 'charge', () => balanceValue('none'))
      : slip('HE-ELECTRONS-MISSING', 'electrons', () => plain(0)),
  ];
}

function makeUpSlips(plan: HalfPlan, at: NodeId, slip: Maker): Slip[] {
  return plan.medium === 'acid'
    ? [
        slip(
          'HE-OXYGEN-GAS',
          at,
          () => wordsValue('oxygen gas', []),
          () => temptsToOxygen(plan),
        ),
      ]
    : [slip('HE-H-IN-ALKALI', at, () => wordsValue('hydrogen ions', []))];
}

/** Two electrons for every oxygen that one unit of the subject loses or gains. */
function oxideElectrons(plan: HalfPlan): number {
  const { skeleton, product } = plan;
  const water = ['H2O'].map((key) => coefficientOf(skeleton.left, key).plus(coefficientOf(skeleton.right, key)).toNumber())[0]!;
  // Water that is the product itself is not what the oxygen leaves as.
  return plan.medium === 'acid' && product.units.length > 0 && temptsToOxygen(plan) ? (2 * water) / unitsOf(plan) : 0;
}

/** Oxygen of a peroxide taken as −2, so that two atoms change by two each. */
function isPeroxideOxidised(plan: HalfPlan): boolean {
  const { element, from, to } = changeIn(plan);
  return element === 'O' && from === -1 && to === 0;
}

function partnerSlips(partner: HalfPlan, slip: Maker): Slip[] {
  return [
    slip('HE-ELECTRON-SIDE', 'partner-charge', () => balanceValue('wrong side')),
    // One atom's electrons for the whole half-equation: I⁻ gives one, so 2I⁻ are given one too.
    slip(
      'HE-ELECTRONS-PER-ATOM',
      'partner-charge',
      () => balanceValue('one atom'),
      () => oneAtom(partner) !== partner.perUnit * unitsOf(partner),
    ),
    ...(partner.isBuilt ? makeUpSlips(partner, 'partner-makeup', slip) : []),
  ];
}
