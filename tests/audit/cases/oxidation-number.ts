import { type Change, changesIn } from '../chemistry/changes.ts';
import { oxidationNumber as numberIn, unusualLigands } from '../chemistry/oxidation-number.ts';
import { count, type Sides, speciesOf } from '../chemistry/sides.ts';
import { type Answer, numberMark } from '../engine/answer.ts';
import { type Answers, type CaseReader, type Node, type PointRule, type Slip, Unreadable } from '../engine/case.ts';
import { Fraction } from '../exact/fraction.ts';
import { writeNumber } from '../exact/printed-number.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import { runTokensText } from '../reading/token-text.ts';
import { everyToken, type Token } from '../reading/tokens.ts';
import { accountFigures, accountSlips, wrongSums } from './account-slips.ts';
import { ELEMENT_NAMES, elementMark, elementNamed } from './elements.ts';
import { statesMarks, statesOf, unlikeAtoms } from './unlike-atoms.ts';

/** An element in a species whose oxidation number is asked for. */
interface Wanted {
  readonly id: string;
  readonly key: string;
  readonly element: string;
}

/** Oxidation numbers of single species, then along the reaction that is printed. */
export const oxidationNumber: CaseReader = ({ question, steps }) => {
  const wanted = wantedIn(question);
  const reaction = reactionIn(question);
  const along = reaction
    ? [wantedOf('before', reaction.reduced), wantedOf('after', { ...reaction.reduced, from: reaction.reduced.to })]
    : [];
  const all = [...wanted, ...along];
  return {
    nodes: [...all.map(numberNode), ...(reaction ? alongNodes(reaction) : [])],
    slips: [
      ...wanted.flatMap(({ id, key, element }) => accountSlips(id, key, element)),
      ...(reaction ? [...sumsAlong(reaction, steps), ...alongSlips(reaction)] : []),
    ],
    points: { ...pointsOf(wanted, steps), ...(reaction ? alongPoints(reaction) : {}) },
    vocabulary: {
      labels: ELEMENT_NAMES,
      numbers: true,
      words: reaction ? { [reaction.reduced.element]: new RegExp(`^${reaction.reduced.element}$`) } : {},
    },
    printed: [
      ...all.flatMap(({ key, element }) => accountFigures(key, element)),
      ...(reaction ? [String(atomsOf(reaction))] : []),
    ],
    explains: wanted.flatMap(({ key }) => unusualLigands(key)),
    faults: faultsOf(question, wanted),
  };
};

/** `chromium in Cr₂O₇²⁻` on the answer lines, or the one that a choice asks about. */
function wantedIn({ parts }: ReadQuestion): Wanted[] {
  const [first] = parts;
  if (!first) throw new Unreadable('what is asked');
  if (first.options.length > 0) {
    const [species] = everyToken(first.prose.flat(), 'species');
    const named = ELEMENT_NAMES.exec(first.proseText)?.[1];
    const element = named && elementNamed(named);
    if (!species || !element) throw new Unreadable('the element and the species');
    return [{ id: 'number-3', key: species.species.key, element }];
  }
  const onLines = first.space.flatMap((token, at, all) => {
    if (token.kind !== 'species') return [];
    const name = / *([a-z]+) in $/.exec(wordsOf(all[at - 1]))?.[1];
    const element = name && elementNamed(name);
    if (!element) throw new Unreadable(`the element that is asked for in ${token.species.key}`);
    return [
      { id: `number-${all.slice(0, at + 1).filter(({ kind }) => kind === 'species').length}`, key: token.species.key, element },
    ];
  });
  return onLines.length > 0 ? onLines : wantedInFrames(first);
}

/** Where the lines are printed for the pupil: `Cr in [Cr(OH)₄]⁻ = ……`. The one with gaps has the place that is left. */
function wantedInFrames({ given }: ReadQuestion['parts'][number]): Wanted[] {
  return given.flatMap(({ left, right }, at) => {
    const [name, species] = left;
    const element = / *([A-Z][a-z]?) in $/.exec(wordsOf(name))?.[1];
    const last = right.at(-1);
    const role = last && 'role' in last ? last.role : undefined;
    return element && species?.kind === 'species' ? [{ id: role ?? `number-${at + 1}`, key: species.species.key, element }] : [];
  });
}

const wordsOf = (token: Token | undefined): string => (token?.kind === 'words' ? token.text : '');
const wantedOf = (id: string, { from, element }: Pick<Change, 'from' | 'element'>): Wanted => ({ id, key: from, element });

interface Reaction {
  readonly sides: Sides;
  readonly reduced: Change;
  readonly oxidised: Change;
}

function reactionIn({ stem }: ReadQuestion): Reaction | undefined {
  const [token] = everyToken(stem.flat(), 'equation');
  if (!token) return undefined;
  const changes = changesIn(token.equation);
  const reduced = changes.find(({ before, after }) => before.compare(after) > 0);
  const oxidised = changes.find(({ before, after }) => before.compare(after) < 0);
  if (!reduced || !oxidised) throw new Unreadable('what is oxidised and reduced in the printed reaction');
  return { sides: token.equation, reduced, oxidised };
}

const plain = (value: Fraction): Answer => ({ kind: 'number', value, unit: '' });
const valueAt = (answers: Answers, id: string): Fraction => {
  const answer = answers.get(id);
  return answer?.kind === 'number' ? answer.value : Fraction.zero;
};
const signed = (value: Fraction): string => numberMark(writeNumber(value, 'whole', true), '');
const unsigned = (value: Fraction): string => numberMark(writeNumber(value, 'whole'), '');

function numberNode({ id, key, element }: Wanted): Node {
  const number = numberIn(key, element);
  if (!number) throw new Unreadable(`the oxidation number of ${element} in ${key}`);
  return { id, needs: [], figures: 'whole', signed: true, left: [`species ${key}`], work: () => plain(number) };
}

/** Atoms of the element that change in the equation as it is written. */
const atomsOf = ({ sides, reduced }: Reaction): Fraction =>
  count(sides.left, reduced.from).multiply(Fraction.of(speciesOf(reduced.from).atoms.get(reduced.element) ?? 0));

function alongNodes(reaction: Reaction): Node[] {
  const { reduced, oxidised } = reaction;
  const node = (id: string, needs: readonly string[], work: Node['work']): Node => ({ id, needs, figures: 'whole', work });
  return [
    node('reduced', [], () => ({ kind: 'said', marks: [elementMark(reduced.element)] })),
    node('change', ['before', 'after'], (answers) => ({
      kind: 'said',
      marks: [signed(valueAt(answers, 'before')), signed(valueAt(answers, 'after'))],
    })),
    node('why-average', [], () => ({ kind: 'said', marks: [] })),
    node('why-unlike', [], () => ({ kind: 'said', marks: [] })),
    node('per-atom', ['before', 'after'], (answers) => plain(valueAt(answers, 'before').subtract(valueAt(answers, 'after')))),
    node('electrons', ['per-atom'], (answers) => plain(atomsOf(reaction).multiply(valueAt(answers, 'per-atom')))),
    node('agent', [], () => ({ kind: 'species', key: oxidised.from })),
  ];
}

/**
 * Wrong sums along the reaction. Where the product is an ion of several elements, who has the wrong idea has it of both: the change is
 * then the difference of two wrong numbers. A product of one element is read off, as is oxygen that has left a peroxide, and only the number before is wrong.
 */
function sumsAlong({ reduced }: Reaction, steps: ReadonlySet<string>): Slip[] {
  const { element, from, to } = reduced;
  if (speciesOf(to).atoms.size === 1 || element === 'O') return accountSlips('before', from, element);
  const last = wrongSums(to, element);
  return wrongSums(from, element).flatMap(({ id, value, figures }) => {
    // A neutral product has no charge to be taken for the number.
    const isRead = id === 'ON-ION-CHARGE' && speciesOf(to).charge === 0;
    const after = isRead ? numberIn(to, element) : last.find((each) => each.id === id)?.value;
    if (!after) return [];
    // A product whose number is right all the same is not blamed.
    const isWrong = !after.equals(numberIn(to, element) ?? after);
    const tells = [`species ${from}`, ...(isWrong ? [`species ${to}`] : []), ...figures];
    const both: Answer = { kind: 'said', marks: [signed(value), signed(after)] };
    return steps.has('change')
      ? [{ id, at: 'change', tells, work: () => both }]
      : [{ id, at: 'per-atom', tells, work: () => plain(value.subtract(after)) }];
  });
}

function alongSlips(reaction: Reaction): Slip[] {
  const { sides, reduced } = reaction;
  return [
    { id: 'HE-ELECTRONS-PER-ATOM', at: 'electrons', work: (answers) => plain(valueAt(answers, 'per-atom')) },
    { id: 'RX-COEFFICIENT-ELECTRONS', at: 'electrons', skips: ['per-atom'], work: () => plain(count(sides.left, reduced.from)) },
    { id: 'RX-AGENT-SWAP', at: 'agent', work: () => ({ kind: 'species', key: reduced.from }) },
  ];
}

function pointsOf(wanted: readonly Wanted[], steps: ReadonlySet<string>): Record<string, PointRule> {
  const rules = wanted.map(({ id, key, element }): [string, PointRule] => {
    const number = numberIn(key, element) ?? Fraction.zero;
    const fraction = number.isWhole() ? [] : [fractionMarks(number)];
    const also = [...fraction, ...statesMarks(key, element)];
    return [
      `${id}:value`,
      { earns: [signed(number), elementMark(element), `species ${key}`], ...(also.length > 0 ? { also } : {}) },
    ];
  });
  const last = wanted.at(-1);
  const why: [string, PointRule][] =
    last && steps.has('why-average')
      ? [
          ['why-average:statement', { earns: [signed(totalOf(last)), elementMark(last.element)] }],
          ['why-unlike:statement', unlikeAtoms(last.key, last.element)],
        ]
      : [];
  return Object.fromEntries([...rules, ...why]);
}

/** What all atoms of the element come to. */
const totalOf = ({ key, element }: Wanted): Fraction =>
  (numberIn(key, element) ?? Fraction.zero).multiply(Fraction.of(speciesOf(key).atoms.get(element) ?? 0));

/** Where atoms differ the question says that an average is meant; a ligand with a charge that not everybody knows is told with it. */
function faultsOf({ parts, stem }: ReadQuestion, wanted: readonly Wanted[]): string[] {
  const [first] = parts;
  const frames = (first?.given ?? []).flatMap(({ left }) => left);
  const asked = first ? runTokensText([...first.prose.flat(), ...first.space, ...frames]) : '';
  const told = everyToken(stem.flat(), 'species').map(({ species }) => species.key);
  return wanted.flatMap(({ key, element }) => [
    ...(statesOf(key, element).length > 0 && !/\baverage\b/.test(asked)
      ? [`the number of ${element} in ${key} is an average, and is not called so`]
      : []),
    ...unusualLigands(key)
      .filter((ion) => !told.includes(ion))
      .map((ion) => `the ligand ${ion} of ${key} is not told`),
  ]);
}

const PARTS: Readonly<Record<string, string>> = { '1/2': '½', '1/3': '⅓', '2/3': '⅔' };

/** Other ways of writing an average: as a mixed number, and as a fraction of two or a decimal. */
function fractionMarks(number: Fraction): string[] {
  const whole = number.above / number.below;
  const rest = number.subtract(Fraction.of(whole));
  const other = number.below === 2n ? `+${number}` : writeNumber(number, { places: 2 }, true);
  return [`number +${whole}${PARTS[rest.toString()] ?? '?'}`, `number ${other}`];
}

function alongPoints(reaction: Reaction): Record<string, PointRule> {
  const { reduced, oxidised } = reaction;
  const { element, from, before, after } = reduced;
  const perAtom = before.subtract(after);
  const atoms = atomsOf(reaction);
  const counted = atoms.equals(Fraction.one) ? [elementMark(element)] : [unsigned(atoms), elementMark(element)];
  return {
    'reduced:statement': { earns: [elementMark(element), `species ${from}`], also: [[`word ${element}`]] },
    'change:value': { earns: [signed(before), signed(after)] },
    'per-atom:method': { earns: [elementMark(element), signed(before), signed(after), unsigned(perAtom)] },
    'electrons:value': { earns: [...counted, unsigned(perAtom.multiply(atoms))] },
    'agent:value': { earns: [`species ${oxidised.from}`], named: oxidised.from },
  };
}
