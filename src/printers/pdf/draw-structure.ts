import type { MarkedContent, StructureElement, StructureOptions } from 'pdfkit';
import type { Sheet } from './draw.ts';
import type { Laid } from './page.ts';
import { isTag, type Tag } from './tag.ts';

/** Writes the structure tree from the tags, children first so that each element is flushed once. Tags that nothing was drawn for are left out. */
export function buildStructure(sheet: Sheet, laid: Laid): void {
  const root = buildElement(sheet, laid.root);
  if (root) sheet.pdf.addStructure(root);
}

function buildElement(sheet: Sheet, tag: Tag): StructureElement | undefined {
  if (tag.type === 'Form') return formElement(sheet, tag);
  const kids = tag.kids.flatMap((kid): readonly (StructureElement | MarkedContent)[] => {
    if (!isTag(kid)) return sheet.contents.get(kid) ?? [];
    const element = buildElement(sheet, kid);
    return element ? [element] : [];
  });
  if (kids.length === 0 && !CELLS.has(tag.type)) return undefined;
  const element = sheet.pdf.struct(tag.type, structureOptions(tag));
  const own = attributes(tag);
  if (own) element.dictionary.data.A = own;
  for (const kid of kids) element.add(kid);
  element.end();
  return element;
}

/** A Form element holds nothing but its widget. */
function formElement(sheet: Sheet, tag: Tag): StructureElement {
  const element = sheet.pdf.struct('Form');
  for (const kid of tag.kids) if (!isTag(kid)) sheet.form.attach(kid, element);
  element.end();
  return element;
}

/** Empty cells stand for room to write in and keep a table's columns equal. */
const CELLS: ReadonlySet<string> = new Set(['TH', 'TD']);

/** Attributes that pdfkit has no option for. */
function attributes(tag: Tag): Record<string, unknown> | undefined {
  if (tag.summary) return { O: 'Table', Summary: new String(tag.summary) };
  return tag.numbering ? { O: 'List', ListNumbering: tag.numbering } : undefined;
}

function structureOptions(tag: Tag): StructureOptions {
  return {
    ...(tag.alt === undefined ? {} : { alt: tag.alt }),
    ...(tag.scope === undefined ? {} : { scope: tag.scope }),
    ...(tag.box === undefined ? {} : { bbox: tag.box, placement: 'Block' }),
  };
}
