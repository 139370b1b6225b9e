import { keyOf } from '../chemistry/write-formula.ts';
import { decimalAt, decimalText } from '../exact/decimal.ts';
import type { Weighed } from './calculators/mass.ts';
import { columns, exactText, lines } from './tell.ts';

/** The molar mass to the decimals of the least precise atomic mass, and the sum it comes from. */
export function tellMass({ formula, total, parts }: Weighed): string {
  const rounded = decimalText(decimalAt(total.value, total.places));
  const exact = exactText(total.value);
  const rows = parts.map(({ symbol, atoms, each, sum }) => [
    symbol,
    `${atoms} × ${exactText(each.value)}`,
    `= ${exactText(sum.value)}`,
  ]);
  const coarse = parts.filter(({ each }) => each.places === total.places).map(({ symbol }) => symbol);
  const because = `the sum is ${exact}; the published mass of ${coarse.join(', ')} has ${decimals(total.places)}`;
  return lines(
    `${keyOf(formula)}: ${rounded} g mol^-1`,
    columns(rows),
    rounded === exact ? undefined : `  ${because}`,
    '  Published atomic masses (IUPAC abridged standard values), not the rounded ones of a sheet.',
  );
}

function decimals(places: number): string {
  return places === 0 ? 'no decimals' : places === 1 ? 'one decimal' : `${places} decimals`;
}
