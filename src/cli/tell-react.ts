import type { Medium } from '../chemistry/couple.ts';
import type { SpeciesKey } from '../chemistry/formula.ts';
import type { Amount, Step } from '../chemistry/mixture.ts';
import { coefficientOf } from '../chemistry/terms.ts';
import { writeEquation } from '../chemistry/write-equation.ts';
import { amountText, type Reacted } from './calculators/react.ts';
import { banNotes, emfText, otherNotes, stopNotes } from './calculators/react-notes.ts';
import { exactText, lines, listed, volts } from './tell.ts';

const MEDIA: Readonly<Record<Medium, string>> = {
  acid: 'in acid (H^+ in excess unless an amount is given)',
  neutral: 'in neutral solution',
  alkali: 'in alkali (OH^- in excess unless an amount is given)',
  'strong-alkali': 'in strong alkali (OH^- in excess unless an amount is given)',
};

/** What happens in the beaker, step by step with both potentials, why it stops, and what is there in the end. */
export function tellReact(reacted: Reacted, table: string): string {
  const { mixture } = reacted;
  const count = mixture.steps.length;
  return lines(
    banNotes(reacted),
    opening(reacted),
    '',
    mixture.steps.flatMap((step, at) => [...stepLines(step, at, count, reacted), '']),
    `In the end: ${mixture.final.map(({ key, amount }) => finalText(key, amount, reacted)).join(', ')}.`,
    section('Why it stops', stopNotes(reacted)),
    section(
      'Beside this',
      mixture.parallel.map(
        ({ combined, emf, because }) => `${writeEquation(combined.equation)}, E°cell = ${volts(emf)}: ${because}`,
      ),
    ),
    section('Notes', otherNotes(reacted)),
    '',
    `Potentials are those stored in the table in force (${table}), not rounded to two decimals as on a sheet. E° says what can`,
    'happen under standard conditions; how fast, and what dilution, heat, complexing and precipitation change, it does not say.',
  );
}

function opening({ ingredients, medium, given }: Reacted): string {
  const names = ingredients.map(
    ({ key, amount }) => `${key} (${amount === 'excess' ? 'in excess' : `${exactText(amount)} mol`})`,
  );
  const conditions = given.length === 0 ? '' : `; given: ${given.join(', ')}`;
  return `${listed(names)}, ${MEDIA[medium]}${conditions}`;
}

function stepLines(step: Step, at: number, count: number, reacted: Reacted): string[] {
  const { oxidant, reductant, combined, extent, limiting } = step;
  const used = coefficientOf(combined.equation.left, limiting).times(extent);
  const number = count === 1 ? '' : `${at + 1}. `;
  return [
    `${number}${oxidant.oxidisedKey} is reduced to ${oxidant.reducedKey}; ${reductant.reducedKey} is oxidised to ${reductant.oxidisedKey}.`,
    `   ${writeEquation(combined.equation)}`,
    `   E°cell = ${emfText(step)}: ${at === 0 ? 'the most positive pair here' : 'now the most positive pair'}.`,
    `   It runs until the ${limiting} is used up (${exactText(used)} mol).${coloursIn(step, reacted)}`,
  ];
}

/** The colours that change: of the couple that is followed first, of the other couple after it. */
function coloursIn({ oxidant, reductant, reduction }: Step, { species }: Reacted): string {
  const changes = [
    [oxidant.oxidisedKey, oxidant.reducedKey],
    [reductant.reducedKey, reductant.oxidisedKey],
  ] as const;
  const told = (reduction ? changes : changes.toReversed()).flatMap(([from, to]) => {
    const [before, after] = [from, to].map((key) => species.get(key)?.colour?.word);
    return before && after && before !== after ? `${from} is ${before}, ${to} is ${after}` : [];
  });
  return told.length === 0 ? '' : ` ${told.join('; ')}.`;
}

function finalText(key: SpeciesKey, amount: Amount, { species }: Reacted): string {
  const colour = species.get(key)?.colour?.word;
  const shown = amount === 'excess' ? 'in excess' : `${amountText(amount)} mol`;
  return `${key} ${shown}${colour === undefined ? '' : ` (${colour})`}`;
}

function section(title: string, entries: readonly string[]): string[] {
  return entries.length === 0 ? [] : ['', `${title}:`, ...entries.map((entry) => `- ${entry}`)];
}
