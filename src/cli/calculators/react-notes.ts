import type { Couple } from '../../chemistry/couple.ts';
import type { Apart, Mixture, Pairing } from '../../chemistry/mixture.ts';
import { writeEquation } from '../../chemistry/write-equation.ts';
import { type Decimal, printDecimal } from '../../exact/decimal.ts';
import { listed, volts } from '../tell.ts';
import type { Reacted } from './react.ts';

/** Everything there is to say beside the steps, one sentence each: bans first, then why it stops, then the rest. */
export function notesOn(reacted: Reacted): string[] {
  return [...banNotes(reacted), ...stopNotes(reacted), ...otherNotes(reacted)];
}

/** Why a class does not put these together. */
export function banNotes({ bans }: Reacted): string[] {
  return bans.map(({ because }) => `Not to be put together in a class: ${because}.`);
}

/** Why nothing more happens. */
export function stopNotes({ mixture }: Reacted): string[] {
  const ended = mixture.notes.filter(({ kind }) => kind === 'medium-used-up' || kind === 'medium-changed');
  return [...ended.map(({ text }) => sentence(text)), ...stopText(mixture)];
}

/** How things stand in the medium, rounds, and what E° allows and yet does not happen. */
export function otherNotes({ mixture }: Reacted): string[] {
  const first = mixture.notes.filter(({ kind }) => kind === 'speciation' || kind === 'precipitates');
  return [
    ...first.map(({ text }) => sentence(text)),
    ...mixture.loops.map(loopText),
    ...heldText(mixture),
    ...mixture.borderline.map(borderlineText),
  ];
}

/** `E°(A/B) − E°(C/D) = +1.36 − (−0.7618) = +2.12 V` */
export function emfText({ oxidant, reductant, emf }: Pairing): string {
  const within = ({ stored }: Couple) => (stored.value.sign() < 0 ? `(${signedText(stored)})` : signedText(stored));
  const exact: Decimal = { value: emf.value, places: Math.max(oxidant.stored.places, reductant.stored.places) };
  return `E°(${oxidant.id}) − E°(${reductant.id}) = ${signedText(oxidant.stored)} − ${within(reductant)} = ${volts(exact)}`;
}

const signedText = (potential: Decimal): string => printDecimal(potential, true);

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`.replace(/\.\.$/, '.');
}

function loopText({ steps, sum, carriers }: Mixture['loops'][number]): string {
  const numbers = listed(steps.map((at) => String(at + 1)));
  const what = steps.length === 1 ? `Step ${numbers} repeats` : `Steps ${numbers} repeat one another`;
  const carried = carriers.length === 0 ? '' : `; ${listed(carriers)} carry the electrons: a catalyst`;
  return `${what}: together they do ${writeEquation(sum)}${carried}.`;
}

/** Why nothing more happens to the subject. */
function stopText({ stop, usedUp, steps }: Mixture): string[] {
  const [next] = stop;
  const gone = usedUp.length === 0 ? [] : [`${listed(usedUp)} ${usedUp.length === 1 ? 'is' : 'are'} used up.`];
  if (next) return [...gone, `It goes no further: ${rungText(next)}, which is negative.`];
  if (gone.length > 0 || steps.length > 0) return gone;
  return ['No reaction is predicted: no pair that is allowed has an E°cell of +0.10 V or more.'];
}

function rungText(pairing: Pairing): string {
  const { oxidant, reductant } = pairing;
  return `for ${oxidant.oxidisedKey} to ${oxidant.reducedKey} with ${reductant.reducedKey}, E°cell = ${emfText(pairing)}`;
}

const HELD: Readonly<Record<Apart['kind'], string>> = {
  hydrogen: 'goes on beside the steps',
  'counter-ion': 'goes on beside the steps',
  air: 'follows in air',
  slow: 'is slow',
  conditional: 'needs a condition',
  'not-observed': 'is not observed',
  passive: 'is stopped by a coating',
  'calculation-only': 'is calculated only',
  precipitates: 'gives way to a precipitate',
};

/** What E° allows and yet does not happen. */
function heldText({ held }: Mixture): string[] {
  return held.map(({ kind, combined, emf, needs, because }) => {
    const given = needs.length === 0 ? '' : ` (${needs.map((need) => `--given ${need}`).join(' or ')})`;
    return `${writeEquation(combined.equation)}, E°cell = ${volts(emf)}, ${HELD[kind]}${given}: ${because}.`;
  });
}

function borderlineText(pairing: Pairing): string {
  return `Too close to call: for ${pairing.oxidant.oxidisedKey} with ${pairing.reductant.reducedKey}, E°cell = ${emfText(pairing)}, below 0.10 V; concentrations decide.`;
}
