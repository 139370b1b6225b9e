import type { Medium } from '../chemistry/couple.ts';
import type { Condition } from '../chemistry/facts.ts';
import type { Print, Settings, Tint } from '../printers/pdf/settings.ts';
import type { Topic } from '../questions/family.ts';
import type { Level, Support, Units } from '../questions/question.ts';
import { flag, listOf, type Option, oneOf, share, someOf, text, whole } from './option.ts';

/** What each word means. Typed by the word lists of other rooms, so that a new level or topic cannot be forgotten here. */
export const LEVELS: Record<Level, string> = { core: 'one idea at a time', stretch: 'more steps, less familiar' };
const SUPPORTS: Record<Support, string> = {
  open: 'none',
  prompts: 'a hint under each part',
  completion: 'some lines given',
  worked: 'a worked example first',
};
const UNITS: Record<Units, string> = { dm: 'cm³, mol dm⁻³', litre: 'mL, mol/L' };
const PRINTS: Record<Print, string> = { standard: '', clear: '12 pt and more', large: '18 pt', '24': '24 pt', '36': '36 pt' };
/** Said apart: an object puts keys that look like numbers first. */
export const PRINT_ORDER: readonly Print[] = ['standard', 'clear', 'large', '24', '36'];
export const TINTS: Record<Tint, string> = { none: '', cream: '', blue: '' };
export const PAGES: Record<Settings['paper'], string> = { a4: '', letter: '' };
export const SIDES: Record<Settings['sides'], string> = { both: '', one: '' };
const MEDIA: Record<Medium, string> = { acid: '', neutral: '', alkali: '', 'strong-alkali': '' };
const CONDITIONS: Record<Condition, string> = {
  warm: '',
  time: '',
  catalyst: '',
  'oxide-removed': '',
  'excess-oxidant': '',
};
export const TOPICS: Record<Topic, string> = {
  'oxidation-and-reduction': 'Oxidation and reduction',
  'electrode-potentials': 'Electrode potentials',
  'redox-titration': 'Redox titration',
  'transition-metals': 'Transition metals',
};

const what = 'What it asks:';
const how = 'How it is made:';
const where = 'Where it goes:';
const terms = 'What it is worked out for:';

/** Every option there is. A command names the rows it takes; help and parsing follow. */
export const OPTIONS = {
  family: listOf({ group: what, help: 'take questions from this family (repeat for more; all families unless said)' }),
  topic: someOf({ group: what, help: 'take questions on this topic (repeat for more)' }, TOPICS),
  codes: listOf({
    group: what,
    help: 'labels of chosen questions, such as cell-emf:3V8DQQJN, with commas between them; nothing else is chosen',
  }),
  sample: whole({ group: what, help: 'make so many questions of the family and tell what they show' }, 1, 100_000),
  check: flag({ group: what, help: 'end with status 1 when a question of the sample fails' }),
  questions: whole({ group: what, help: 'length as a number of questions (5 unless another length is given)' }, 1, 9999),
  candidates: { ...whole({ group: what, help: 'how many candidates (12 unless said)' }, 1, 9999), typed: 'questions' },
  marks: whole({ group: what, help: 'length in marks' }, 1, 9999),
  minutes: whole({ group: what, help: 'length in minutes of working time' }, 1, 9999),
  level: oneOf({ group: what, help: 'how demanding' }, LEVELS),
  choice: share({ group: what, help: 'share of the marks that is multiple choice, 0 to 1 (0 unless said)' }),
  without: listOf({ group: what, help: 'leave out a topic, family or species such as Cr2O7^2- (repeat for more)' }),
  'without-colour-recall': flag({ group: what, help: 'ask another property where a colour would be asked, for the same marks' }),
  seed: text({ group: how, help: 'a word or phrase; the same one makes the same sheet again (a new word unless said)' }),
  support: oneOf({ group: how, help: 'help given on the sheet' }, SUPPORTS),
  on: text({ group: how, help: 'misconception whose step support completion leaves blank, such as TI-RATIO-ONE' }),
  units: oneOf({ group: how, help: 'how volumes and concentrations are written' }, UNITS),
  table: text({ group: how, help: "a department's own table of potentials (CSV), laid over ours" }),
  wording: text({ group: how, help: "folder of a department's own templates, laid over ours" }),
  title: text({ group: how, help: 'printed large at the top (made from the topics unless said)' }),
  data: flag({ group: where, help: 'also a page of data: potentials with some to spare, masses, constants' }),
  teacher: flag({ group: where, help: 'also a teacher copy, with every answer in its place' }),
  solutions: flag({ group: where, help: 'also worked solutions for pupils' }),
  key: flag({ group: where, help: 'also a compact answer key, several copies to cut apart' }),
  feedback: flag({ group: where, help: 'also feedback notes to hand back, one for each misconception' }),
  print: oneOf({ group: where, help: 'size of print' }, PRINTS, PRINT_ORDER),
  sides: oneOf({ group: where, help: 'sides of the paper that are printed, for the margin with the holes' }, SIDES),
  tint: oneOf({ group: where, help: 'background of the page' }, TINTS),
  fillable: flag({ group: where, help: 'question sheet with fields to type into, for work handed in as a file' }),
  aloud: flag({ group: what, help: 'print instead what a reader aloud would say, in its order' }),
  page: oneOf({ group: where, help: 'paper' }, PAGES),
  name: text({ group: where, help: "the set's name, which its folder bears (made from the seed unless said)" }),
  out: text({ group: where, help: 'folder that the set is put into (out unless said)' }),
  replace: flag({ group: where, help: 'put the new set in place of one that is there' }),
  json: flag({ group: where, help: 'print the result as JSON' }),
  medium: oneOf({ group: terms, help: 'medium of the reaction' }, MEDIA),
  solvent: { ...oneOf({ group: terms, help: 'whose ions complete the equation' }, { acid: '', alkali: '' }), typed: 'medium' },
  couple: listOf({
    group: terms,
    help: 'couple that takes part, such as O2/H2O2, where more than one answer balances (give two)',
  }),
  'as-written': flag({ group: terms, help: 'take the half-cells as given, even if the e.m.f. is then negative' }),
  with: listOf({
    group: terms,
    help: 'concentration in mol dm⁻³, or pressure in 100 kPa: "Cu^2+=0.025" (repeat for more; others 1)',
  }),
  temperature: text({ group: terms, help: 'temperature in kelvin (298.15 unless said)' }),
  amount: listOf({ group: terms, help: 'amount in mol: "Zn=1.5" (repeat for more; others 1)' }),
  excess: listOf({ group: terms, help: 'what there is more of than can be used up (repeat for more)' }),
  given: someOf({ group: terms, help: 'condition that is met (repeat for more)' }, CONDITIONS),
} satisfies Readonly<Record<string, Option<unknown>>>;

export type OptionName = keyof typeof OPTIONS;

/** An option as it is typed, without its dashes. */
export function typedName(name: OptionName): string {
  const row: Option<unknown> = OPTIONS[name];
  return row.typed ?? name;
}

/** The values of the options that a command takes. */
export type Given<K extends OptionName> = { readonly [P in K]: ReturnType<(typeof OPTIONS)[P]['read']> };
