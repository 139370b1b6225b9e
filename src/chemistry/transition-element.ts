import { elementOf } from './elements.ts';

/** Whether an element is a transition element, by the two definitions in use. */
export interface TransitionElement {
  /** school: forms at least one stable ion with a partly filled d subshell; scandium and zinc are not */
  readonly school: boolean;
  /** IUPAC: atom, or a cation, with a partly filled d subshell; scandium is, zinc is not */
  readonly iupac: boolean;
  readonly because: string;
}

/** @see IUPAC Gold Book, "transition element"; the school definition is common practice */
export function transitionElement(symbol: string): TransitionElement {
  const { group, name } = elementOf(symbol);
  if (group === undefined) return { school: false, iupac: false, because: `${name} is in the f block` };
  if (group < 3 || group > 12) return { school: false, iupac: false, because: `${name} is not in the d block` };
  if (group === 12)
    return { school: false, iupac: false, because: `the d subshell of ${name} is full in the atom and in its ions` };
  if (group === 3) {
    return {
      school: false,
      iupac: true,
      because: `the atom of ${name} has one d electron, but its only stable ion, 3+, has none`,
    };
  }
  return { school: true, iupac: true, because: `${name} forms an ion with a partly filled d subshell` };
}
