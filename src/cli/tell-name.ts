import { complexNodes } from '../chemistry/complex.ts';
import { complexParts } from '../chemistry/complex-parts.ts';
import { elementOf } from '../chemistry/elements.ts';
import { oxidationText } from '../chemistry/oxidation-rules.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { Named } from './calculators/name.ts';
import { lines } from './tell.ts';

/** The name, another one in use, and what the complex is like. */
export function tellName({ formula, name, tradeName, oxidationNumber, coordinationNumber, shape }: Named): string {
  const [nodes] = complexNodes(formula);
  const centre = nodes && complexParts(nodes)?.centre;
  const complex =
    centre === undefined || oxidationNumber === undefined
      ? undefined
      : `  ${elementOf(centre).name} ${oxidationText(oxidationNumber)}, coordination number ${coordinationNumber}`;
  return lines(
    `${keyOf(formula)}: ${name}`,
    tradeName === undefined ? undefined : `  also called ${tradeName}`,
    complex && (shape === undefined ? complex : `${complex}, ${shape}`),
  );
}
