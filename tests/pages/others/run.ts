import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readPdf } from '../../../src/readers/read-pdf.ts';
import { differencesBetween, headingsIn, type Texts } from './compare-texts.ts';
import { pageTexts, structureText } from './our-text.ts';
import { popplerPages, popplerStructure } from './their-text.ts';

// Run by `.ci/run` with folders: compares what our reader and poppler find in every PDF file below them, and ends with status 1 where they
// disagree. That a difference would be found is shown each time, with a text of which one letter is another.
const files = process.argv
  .slice(2)
  .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name)))
  .filter((name) => name.endsWith('.pdf'))
  .sort();
const sums = { pages: 0, characters: 0, elements: 0, headings: 0 };
const faults = files.flatMap((file) => {
  const reading = readPdf(readFileSync(file));
  const ours: Texts = { pages: pageTexts(reading), structure: structureText(reading) };
  const theirs: Texts = { pages: popplerPages(file), structure: popplerStructure(file) };
  sums.pages += ours.pages.length;
  sums.characters += ours.pages.join('').length;
  sums.elements += ours.structure.split(/<[A-Z]/).length - 1;
  sums.headings += headingsIn(ours.structure).split(/<H\d>/).length - 1;
  const found = differencesBetween(ours, theirs);
  const changed = { ...theirs, pages: theirs.pages.map((text) => text.replace(/[a-z]/, 'Ж')) };
  const blind = differencesBetween(ours, changed).length === 0 ? ['a changed letter is not noticed'] : [];
  return [...found, ...blind].map((each) => `${file}: ${each}`);
});
for (const fault of faults) console.error(fault);
console.log(
  `${files.length} files, ${sums.pages} pages: ${sums.characters} characters, ${sums.elements} elements and ${sums.headings} headings ` +
    `${faults.length === 0 ? 'are the same to poppler and to us' : `with ${faults.length} differences`}`,
);
if (faults.length > 0 || files.length === 0 || sums.headings === 0) process.exitCode = 1;
