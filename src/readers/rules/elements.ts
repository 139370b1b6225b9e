import type { Reading } from '../read-pdf.ts';
import { type Element, isElement } from '../read-structure.ts';

/** All structure elements below the root, in document order. */
export function elementsOf(reading: Reading): Element[] {
  const found: Element[] = [];
  const visit = (element: Element): void => {
    found.push(element);
    for (const kid of element.kids) if (isElement(kid)) visit(kid);
  };
  for (const kid of reading.structure?.kids ?? []) if (isElement(kid)) visit(kid);
  return found;
}

export function elementsOfType(reading: Reading, type: string): Element[] {
  return elementsOf(reading).filter((element) => element.standard === type);
}

/** Standard types of an element's child elements. */
export function kidTypes(element: Element): string[] {
  return element.kids.filter(isElement).map((kid) => kid.standard);
}
