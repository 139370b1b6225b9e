import { COLOUR_WORDS, sameFamily } from '../chemistry/colours.ts';
import { isNameOf } from '../chemistry/names.ts';
import type { Case, PointRule } from '../engine/case.ts';
import type { Outcome } from '../engine/ledger.ts';
import { difference, marksIn } from '../engine/marks.ts';
import type { ReadPoint } from '../reading/scheme.ts';
import type { Token } from '../reading/tokens.ts';
import { type Audited, at } from './place.ts';

const NOTHING: PointRule = { earns: [] };

/**
 * What each mark is given for. A point that says something which can be computed must say what the auditor finds; one that only says
 * how (`balanced, with the electrons cancelled`) stands or falls with the answer of its step, which is checked where it is printed.
 */
export function auditPoints(audited: Audited): void {
  for (const block of audited.blocks) {
    for (const point of block.points) audited.ledger.note(at(audited, block.label), 'marking point', outcomeOf(audited, point));
  }
}

function outcomeOf({ asked, place }: Audited, point: ReadPoint): Outcome {
  const { nodes, vocabulary } = asked;
  const needless = carriesNothing(point, asked, place.answering === 'choice');
  if (needless) return { problem: `${point.role}: ${needless}` };
  // A choice is marked for the letter alone.
  const points: NonNullable<typeof asked.points> = place.answering === 'choice' ? {} : (asked.points ?? {});
  const rule = points[point.role];
  if (!rule && !nodes.some(({ id }) => id === point.step)) return { unreached: `no rule for \`${point.role}\`` };
  const { earns, named, families, check, ...lists } = rule ?? NOTHING;
  const wrong = earns && difference(earns, marksIn(point.earns, vocabulary));
  const others = (['also', 'not', 'ignore'] as const).map((list) => listProblem(point, list, lists[list], named, vocabulary));
  const strange = families ? strangeColours(point, families) : undefined;
  const problems = [wrong, ...others, strange, check?.(point.text)].filter((each) => each !== undefined);
  if (problems.length === 0) return 'holds';
  return rule
    ? { problem: `${point.role}: ${problems.join('; ')}` }
    : { unreached: `nothing is known of what \`${point.role}\` says` };
}

function listProblem(
  point: ReadPoint,
  list: 'also' | 'not' | 'ignore',
  expected: PointRule['also'],
  named: string | undefined,
  vocabulary: Parameters<typeof marksIn>[1],
): string | undefined {
  const runs = point[list].filter((run) => !(list === 'also' && named !== undefined && isNameOf(plainWords(run), named)));
  const misnamed = list === 'also' && named !== undefined && runs.length === point[list].length && runs.length > 0;
  if (misnamed) return `${plainWords(runs[0]!)} is no name of ${named}`;
  // Where nothing is expected of words, only chemistry and figures that stand as such are held against them.
  const found = runs.flatMap((run) => marksIn(run, expected ? vocabulary : {})).filter((mark) => !mark.startsWith('unit '));
  const wrong = difference((expected ?? []).flat(), found);
  return wrong && `${list}: ${wrong}`;
}

/** A mark can only stand for right work on something wrong when its step goes on from an earlier one. */
function carriesNothing({ carries, step }: ReadPoint, { nodes }: Case, isChoice: boolean): string | undefined {
  const needs = nodes.find(({ id }) => id === step)?.needs ?? [];
  return carries && (isChoice || needs.length === 0) ? 'carries on, though nothing comes before it' : undefined;
}

/** Colours that are also right must be of a family with one that is right; in `blue: sky blue` of the thing that is blue. */
function strangeColours({ also }: ReadPoint, families: readonly (readonly string[])[]): string | undefined {
  const clauses = also.flatMap((run) =>
    plainWords(run)
      .replace(/^accepted words: /, '')
      .split('; '),
  );
  const strange = clauses.flatMap((clause) => {
    const [head = '', list] = clause.split(': ');
    const right = (list === undefined ? families : families.filter((words) => words.includes(head))).flat();
    const found = [...(list ?? clause).matchAll(COLOUR_WORDS)].map(([colour]) => colour.toLowerCase());
    return right.length === 0 ? [clause] : found.filter((colour) => !right.some((each) => sameFamily(colour, each)));
  });
  return strange.length > 0 ? `also: ${strange.join(', ')} for ${families.flat().join(', ')}` : undefined;
}

const plainWords = (run: readonly Token[]): string => run.map((token) => (token.kind === 'words' ? token.text : '')).join('');
