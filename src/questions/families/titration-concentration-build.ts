import type { Block } from '../../document/block.ts';
import type { Inline } from '../../document/inline.ts';
import { quantity, species, text } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Decimal } from '../../exact/decimal.ts';
import { printNumber } from '../../exact/print-number.ts';
import type { Tables } from '../../potentials/tables.ts';
import { drawnChoice } from '../choice-part.ts';
import type { Ask } from '../family.ts';
import { inPlural, solutionName } from '../names.ts';
import { potentialTable } from '../potential-table.ts';
import type { Item } from '../question.ts';
import { unitNames } from '../unit-names.ts';
import type { TitrationDraw } from './titration-concentration.ts';
import { titrationData } from './titration-concentration-data.ts';
import { titrationParts } from './titration-concentration-parts.ts';
import { titrationSlips } from './titration-concentration-slips.ts';
import { titrationSteps } from './titration-concentration-steps.ts';
import { type Side, type Sides, sidesOf } from './titration-sides.ts';

/** Everything that steps, parts and slips of one titration share. */
export interface Titration extends TitrationDraw {
  readonly sides: Sides;
  readonly known: Side;
  readonly found: Side;
  readonly units: ReturnType<typeof unitNames>;
  /** id of the datum whose volume goes with the known solution, and with the unknown one */
  readonly knownVolume: 'titre' | 'portion';
  readonly foundVolume: 'titre' | 'portion';
  readonly explainsEnd: boolean;
  readonly ask: Ask;
  readonly context: WordsContext;
}

export function buildTitration(drawn: TitrationDraw, tables: Tables, ask: Ask, words: Words): Item {
  const titration = titrationOf(drawn, tables, ask);
  const { sides } = titration;
  const steps = titrationSteps(titration, words);
  const slips = titrationSlips(titration, tables, words);
  const key = [sides.oxidant.couple.id, sides.reductant.couple.id].join(' ');
  const shared = {
    strategy: 'amounts through a titration',
    features: featuresOf(titration),
    identity: `${key} ${drawn.unknown}${drawn.dilution ? ' diluted' : ''}`,
    stem: stemOf(titration, tables, words),
    data: titrationData(titration),
    gives: [`end:${key}`],
    cautions: drawn.cautions,
  };
  if (ask.answering === 'choice') return choiceItem(titration, { ...shared, steps, slips }, words, key);
  return { ...shared, steps, slips, parts: titrationParts(titration, words), asks: [`eq:${key}`, `ratio:${key}`] };
}

/** The concentration alone, as three options; the steps before it are worked but carry no marks. */
function choiceItem(titration: Titration, item: Omit<Item, 'parts' | 'asks'>, words: Words, key: string): Item {
  const wanted = new Set([
    'amount',
    'reaction',
    'equation',
    'ratio',
    'found-coefficient',
    'known-coefficient',
    'found-amount',
    'concentration',
  ]);
  const steps = item.steps.filter(({ id }) => wanted.has(id)).map((step) => ({ ...step, part: 'a' }));
  const slips = item.slips.filter(({ at }) => wanted.has(at));
  const whole = { ...item, steps, slips };
  const step = steps.find(({ id }) => id === 'concentration')!;
  const part = drawnChoice({ part: 'a', step, prompt: words.inline('choice', titration.context), words, most: 3, maths: 1 })(
    whole,
  );
  return { ...whole, parts: [{ ...part, practical: 1 }], asks: [`eq:${key}`, `ratio:${key}`] };
}

function titrationOf(drawn: TitrationDraw, tables: Tables, ask: Ask): Titration {
  const sides = sidesOf(drawn.system, tables);
  const isAnalyte = drawn.unknown === 'analyte';
  const [known, found] = isAnalyte ? [sides.titrant, sides.analyte] : [sides.analyte, sides.titrant];
  const units = unitNames(ask.units);
  const { system, acid, dilution } = drawn;
  const volume = (value: Decimal): Inline => quantity(printNumber(value), units.volume);
  const names = { titrant: solutionName(system.titrantSalt, tables), analyte: solutionName(system.analyteSalt, tables) };
  return {
    ...drawn,
    sides,
    known,
    found,
    units,
    knownVolume: isAnalyte ? 'titre' : 'portion',
    foundVolume: isAnalyte ? 'portion' : 'titre',
    explainsEnd: ask.level === 'stretch' && system.indicator === 'self',
    ask,
    context: {
      ...names,
      acid: system.acid,
      condition: system.condition,
      starch: system.indicator === 'starch',
      other: !['self', 'starch'].includes(system.indicator),
      indicator: system.indicator,
      acidVolume: volume(acid),
      ...(dilution ? { sampleVolume: volume(dilution.sample), flaskVolume: volume(dilution.flask) } : {}),
      solution: isAnalyte ? names.analyte : names.titrant,
      known: species(known.reacts),
      knownName: inPlural(known.key, tables),
      unknown: species(found.reacts),
      unknownName: inPlural(found.key, tables),
      oxidant: species(sides.oxidant.reacts),
      reductant: species(sides.reductant.reacts),
      oxidantReduced: species(sides.oxidant.product),
      reductantOxidised: species(sides.reductant.product),
      unit: quantity('', units.concentration),
    },
  };
}

function stemOf(titration: Titration, tables: Tables, words: Words): Block[] {
  const { concentration, titre, portion, dilution, units, sides, context, ask, known } = titration;
  const row = (section: string, value: Decimal, unit: string, id: string): Inline[][] => [
    words.inline(section, { ...context, ...rowContext }),
    [quantity(printNumber(value), unit, id)],
  ];
  const rowContext = {
    species: inPlural(known.key, tables),
    formula: species(known.reacts),
    solution: known === sides.titrant ? context.titrant : context.analyte,
  };
  const readings: Block = {
    kind: 'table',
    summary: 'Readings of the titration',
    header: [[text('Reading')], [text('Value')]],
    rows: [
      row('row-concentration', concentration, units.concentration, 'c'),
      row(dilution ? 'row-portion-diluted' : 'row-portion', portion, units.volume, 'portion'),
      row('row-titre', titre, units.volume, 'titre'),
    ],
    rowHeaders: true,
    align: ['start', 'end'],
  };
  const halves = [sides.reductant.couple, sides.oxidant.couple].map((couple) => ({
    couple,
    before: [],
    datum: `E:${couple.id}`,
  }));
  return [
    ...words.blocks(dilution ? 'stem-diluted' : 'stem', context),
    ...(ask.level === 'core' ? [] : words.blocks('changes', { ...context, ...changes(sides) })),
    { kind: 'given', caption: 'Readings', blocks: ask.level === 'core' ? [readings, potentialTable(halves)] : [readings] },
  ];
}

function changes({ titrant, analyte }: Sides): WordsContext {
  return {
    titrantFrom: species(titrant.reacts),
    titrantTo: species(titrant.product),
    analyteFrom: species(analyte.reacts),
    analyteTo: species(analyte.product),
  };
}

function featuresOf({ ask, sides, dilution, unknown, explainsEnd, system }: Titration): Record<string, string> {
  const [a, b] = [sides.titrant.coefficient, sides.analyte.coefficient];
  return {
    answering: ask.answering,
    'half-equations': ask.level === 'core' ? 'given' : 'built',
    ratio: a.equals(b) ? 'one' : a.over(b).isInteger() || b.over(a).isInteger() ? 'simple' : 'awkward',
    acid: system.acid ? 'added' : 'none',
    dilution: dilution ? 'yes' : 'no',
    unknown,
    'end point': explainsEnd ? 'explained' : 'stated',
  };
}
