import type { Couple } from '../../chemistry/couple.ts';
import type { CellDraw } from './cell-emf.ts';

/** A half-cell on the page. */
export interface CellOnPage {
  /** `half-cell A` */
  readonly name: string;
  readonly label: string;
  readonly couple: Couple;
  /** id of the datum that prints its E° */
  readonly datum: string;
}

/** Which half-cell is which, told by potential. */
export interface CellFacts {
  /** the two that are joined, in printed order */
  readonly cells: readonly [CellOnPage, CellOnPage];
  readonly decoy?: CellOnPage;
  /** all in printed order */
  readonly printed: readonly CellOnPage[];
  readonly positive: CellOnPage;
  readonly negative: CellOnPage;
  readonly labels: { readonly first: string; readonly second: string };
  readonly key: string;
}

/**
 * Labels A, B and, for a decoy, C; beside lettered options P, Q and R. The decoy stands last so that the joined ones are read first.
 */
export function cellFacts({ first, second, decoy }: CellDraw, isChoice: boolean): CellFacts {
  const [one, two, three] = isChoice ? (['P', 'Q', 'R'] as const) : (['A', 'B', 'C'] as const);
  const onPage = (label: string, couple: Couple): CellOnPage => ({
    label,
    name: `half-cell ${label}`,
    couple,
    datum: `E:${label}`,
  });
  const cells = [onPage(one, first), onPage(two, second)] as const;
  const [a, b] = cells;
  const third = decoy ? onPage(three, decoy) : undefined;
  const [positive, negative] = a.couple.printed.value.compare(b.couple.printed.value) > 0 ? [a, b] : [b, a];
  return {
    cells,
    ...(third ? { decoy: third } : {}),
    printed: third ? [a, b, third] : cells,
    positive,
    negative,
    labels: { first: one, second: two },
    key: [first.id, second.id].sort().join(' '),
  };
}
