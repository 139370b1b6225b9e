import { type Couple, formsOf } from '../chemistry/couples.ts';
import { Unreadable } from '../engine/case.ts';
import { marksIn } from '../engine/marks.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import { everyToken } from '../reading/tokens.ts';

/** The rows of a question's tables of potentials: half-equation, value, and the label before it. */
export function couplesIn({ tables }: ReadQuestion): Couple[] {
  return tables
    .filter(({ header }) => header.some((cell) => cell.includes('E°')))
    .flatMap(({ rows }) =>
      rows.map((cells) => {
        const [half] = everyToken(cells.flat(), 'equation');
        const [potential] = everyToken(cells.at(-1) ?? [], 'number');
        const forms = half && formsOf(half.equation);
        if (!half || !potential || !forms) throw new Unreadable(`a row of potentials: ${marksIn(cells.flat()).join(' ')}`);
        const first = cells[0]?.[0];
        const label = cells.length > 2 && first?.kind === 'words' ? first.text.trim() : '';
        return { ...forms, half: half.equation, potential: potential.number.value, label };
      }),
    );
}

/** Every figure that the sheet prints in a question's stem and tables. */
export function figuresIn({ stem, tables }: ReadQuestion): string[] {
  const cells = tables.flatMap(({ rows }) => rows.flat(2));
  return everyToken([...stem.flat(), ...cells], 'number').map(({ number }) => number.text);
}
