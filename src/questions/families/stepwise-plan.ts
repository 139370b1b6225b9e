import type { Ask } from '../family.ts';
import type { Level, PartId } from '../question.ts';
import type { Ladder } from './stepwise-ladder.ts';

/** Which parts a ladder question has, and what stands in each. */
export interface LadderPlan {
  readonly level: Level;
  /** rungs whose E°cell is asked, by place */
  readonly emfs: readonly number[];
  readonly emfPart: PartId;
  /** the equation of the first step; core only */
  readonly firstPart?: PartId;
  readonly finalPart: PartId;
  readonly stopPart: PartId;
  /** the equation of the whole change; stretch only */
  readonly overallPart?: PartId;
  readonly lookPart: PartId;
  /** colours are asked where they can be seen, oxidation numbers where something masks them or colours are not to be recalled */
  readonly sees: boolean;
  /** oxidation numbers that are asked: at the start and in the end, or in the end alone, for the marks that the colours would have */
  readonly numbers: 'both' | 'last';
}

/** Core is signposted step by step; stretch asks for the chain at once. */
export function planOf(ladder: Ladder, { level, withoutColours = false }: Ask): LadderPlan {
  const sees = ladder.isSeen && !withoutColours;
  const numbers = ladder.isSeen && ladder.rungs.length === 1 ? 'last' : 'both';
  return level === 'core'
    ? { level, emfs: [0], emfPart: 'a', firstPart: 'b', finalPart: 'c', stopPart: 'd', lookPart: 'e', sees, numbers }
    : {
        level,
        emfs: ladder.rungs.map((_, at) => at),
        emfPart: 'a',
        finalPart: 'a',
        stopPart: 'b',
        overallPart: 'c',
        lookPart: 'd',
        sees,
        numbers,
      };
}
