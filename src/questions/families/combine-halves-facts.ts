import { joined } from '../../chemistry/cell.ts';
import type { Combined } from '../../chemistry/combine.ts';
import type { Couple } from '../../chemistry/couple.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { coefficientOf } from '../../chemistry/terms.ts';
import type { Rational } from '../../exact/rational.ts';
import { bare } from '../without-states.ts';
import type { CombineDraw } from './combine-halves.ts';

/** A half-equation on the page. */
export interface HalfOnPage {
  readonly label: string;
  readonly couple: Couple;
  /** whole factor that makes the electrons equal */
  readonly factor: Rational;
  /** id of the datum that prints its E°, where E° is printed */
  readonly datum: string;
}

/** Both half-equations, told by place and by what they do. */
export interface CombineFacts {
  readonly drawn: CombineDraw;
  readonly halves: readonly [HalfOnPage, HalfOnPage];
  /** the one that runs as a reduction, and the one that runs as an oxidation */
  readonly reduced: HalfOnPage;
  readonly oxidised: HalfOnPage;
  readonly combined: Combined;
  readonly oxidant: Formula;
  readonly reductant: Formula;
}

/** @param labels of the half-equations in printed order */
export function combineFacts(drawn: CombineDraw, labels: readonly [string, string]): CombineFacts {
  const { oxidant, reductant } = drawn.pair;
  const combined = joined(oxidant, reductant);
  const half = (label: string, couple: Couple): HalfOnPage => ({
    label,
    couple,
    factor: couple === oxidant ? combined.timesReduction : combined.timesOxidation,
    datum: `E:${label}`,
  });
  const [first, second] = drawn.oxidantFirst ? [oxidant, reductant] : [reductant, oxidant];
  const halves = [half(labels[0], first), half(labels[1], second)] as const;
  const [one, two] = halves;
  return {
    drawn,
    halves,
    reduced: drawn.oxidantFirst ? one : two,
    oxidised: drawn.oxidantFirst ? two : one,
    combined,
    oxidant: bare(oxidant.oxidised),
    reductant: bare(reductant.reduced),
  };
}

/** H⁺, OH⁻ or water, whichever stands on one and the same side of both half-equations as stored, so that some of it cancels in the sum. */
export function cancelling({ reduced, oxidised }: CombineFacts): readonly Leftover[] {
  return LEFTOVERS.filter((key) =>
    (['left', 'right'] as const).some((side) =>
      [reduced, oxidised].every(({ couple }) => !coefficientOf(couple.half[side], key).isZero()),
    ),
  );
}

const LEFTOVERS = ['H^+', 'OH^-', 'H2O'] as const;
export type Leftover = (typeof LEFTOVERS)[number];
