import { type Configuration, electronConfiguration } from '../../chemistry/electron-configuration.ts';
import type { Formula } from '../../chemistry/formula.ts';
import { parseFormula } from '../../chemistry/parse-formula.ts';
import { type TransitionElement, transitionElement } from '../../chemistry/transition-element.ts';

/** What `couplet electrons --json` prints of one input. */
export interface ElectronsAnswer {
  readonly input: string;
  /** `[Ar] 3d3` */
  readonly configuration: string;
  readonly unpaired: string;
  /** by the school definition: forms an ion with a partly filled d subshell */
  readonly transitionElement: boolean;
}

/** An input with the configuration of its atom, ion or central ion. */
export interface Configured {
  readonly input: string;
  readonly formula: Formula;
  readonly configuration: Configuration;
  readonly transition: TransitionElement;
}

/** @throws Fault `not-an-atom`, `too-few-electrons`, or a fault of the text */
export function electrons(input: string): Configured {
  const formula = parseFormula(input);
  const configuration = electronConfiguration(formula);
  return { input, formula, configuration, transition: transitionElement(configuration.symbol) };
}

export function electronsAnswer({ input, configuration, transition }: Configured): ElectronsAnswer {
  return {
    input,
    configuration: configuration.text,
    unpaired: String(configuration.unpaired),
    transitionElement: transition.school,
  };
}
