import { ELEMENTS } from '../chemistry/names.ts';

const NAMES = Object.values(ELEMENTS);

/** Finds names of elements in prose that stand alone, not as part of another name (`iron` in `iron(II)`). */
export const ELEMENT_NAMES = new RegExp(`\\b(${NAMES.join('|')})\\b(?!\\()`);

export const elementNamed = (name: string): string | undefined => Object.entries(ELEMENTS).find(([, each]) => each === name)?.[0];

export const elementMark = (element: string): string => `label ${ELEMENTS[element] ?? element}`;
