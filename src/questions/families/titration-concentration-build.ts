import type { Block } from '../../document/block.ts';
import type { Inline } from '../../document/inline.ts';
import { quantity, species, text } from '../../document/inlines.ts';
import type { Words, WordsContext } from '../../document/words.ts';
import type { Decimal } from '../../exact/decimal.ts';
import { printNumber } from '../../exact/print-number.ts';
import type { Tables } from '../../potentials/tables.ts';
import type { Ask, Built } from '../family.ts';
import { halfEquationTable } from '../half-equation-table.ts';
import { inPlural, solutionName } from '../names.ts';
import type { Item } from '../question.ts';
import { unitNames } from '../unit-names.ts';
import type { TitrationDraw } from './titration-concentration.ts';
import { titrationData } from './titration-concentration-data.ts';
import { titrationParts } from './titration-concentration-parts.ts';
import { titrationSlips } from './titration-concentration-slips.ts';
import { lastStep, titrationSteps } from './titration-concentration-steps.ts';
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

export function buildTitration(drawn: TitrationDraw, tables: Tables, ask: Ask, words: Words): Built {
  const titration = titrationOf(drawn, tables, ask);
  const { sides } = titration;
  const steps = titrationSteps(titration, words);
  const slips = titrationSlips(titration, tables, words);
  const key = [sides.oxidant.couple.id, sides.reductant.couple.id].join(' ');
  const item: Item = {
    strategy: 'amounts through a titration',
    features: featuresOf(titration),
    identity: `${key} ${drawn.unknown}${drawn.dilution ? ' diluted' : ''}`,
    stem: stemOf(titration, tables, words),
    data: titrationData(titration),
    steps,
    slips,
    parts: titrationParts(titration, words),
    gives: [
      `end:${key}`,
      ...(ask.level === 'core' ? [sides.oxidant, sides.reductant].map(({ couple }) => `half:${couple.id}`) : []),
    ],
    asks: [`eq:${key}`, `ratio:${key}`],
    cautions: drawn.cautions,
  };
  const choice = {
    step: lastStep(titration).id,
    prompt: words.inline(drawn.dilution ? 'choice-stock' : 'choice', titration.context),
    most: 3,
    objective: 'application',
    maths: 1,
    practical: 1,
  } as const;
  return { item, choice };
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
  const halves = halfEquationTable([sides.reductant.couple, sides.oxidant.couple]);
  return [
    ...words.blocks(dilution ? 'stem-diluted' : 'stem', context),
    ...(ask.level === 'core' ? [] : words.blocks('changes', { ...context, ...changes(sides) })),
    { kind: 'given', caption: 'Readings', blocks: ask.level === 'core' ? [readings, halves] : [readings] },
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
    'half-equations': ask.level === 'core' ? 'given' : 'built',
    ratio: a.equals(b) ? 'one' : a.over(b).isInteger() || b.over(a).isInteger() ? 'simple' : 'awkward',
    acid: system.acid ? 'added' : 'none',
    dilution: dilution ? 'yes' : 'no',
    unknown,
    'end point': ask.withoutColours
      ? explainsEnd
        ? 'rinsing explained'
        : 'excess stated'
      : explainsEnd
        ? 'explained'
        : 'stated',
  };
}
