import { describe, expect, it } from 'vitest';
import { inProject } from '../support/data.ts';
import { auditPaper } from './audit.ts';
import { Ledger } from './engine/ledger.ts';
import { kitchenIn } from './make/kitchen.ts';
import { chosenDocuments, type PaperAsk, paperDocuments } from './make/papers.ts';
import { readMarkScheme } from './reading/scheme.ts';

const kitchen = kitchenIn(inProject('.'));

/** A paper of one question, made again from its code. */
function paperOf(family: string, code: string, level: PaperAsk['level'], support: PaperAsk['support'] = 'open') {
  return paperDocuments(
    { seed: 'findings', level, support, units: 'dm', questions: [{ family, answering: 'written', code }] },
    kitchen,
  );
}

/** What the audit has found once and must not find again. */
describe('the audit', () => {
  it('finds the time of every mark beside every mark, also in the scheme of a completion copy', () => {
    const documents = paperOf('stepwise-reduction', 'R894XS46', 'core', 'completion');
    const { strip, facts } = readMarkScheme(documents.scheme);
    expect(Number(strip.get('Marks'))).toBeGreaterThan(Number(strip.get('Completion copy')));
    expect(facts).toContain(strip.get('Time'));
    expect(auditPaper(documents).findings).toEqual([]);
  });

  it.each(['SNNCERS5', 'VC6GQEA1', 'PM6ZJX03'])(
    'lets one who stopped a ladder too early find a positive value no reason to stop (%s)',
    (code) => {
      const levels = ['core', 'stretch'] as const;
      const rows = levels.flatMap((level) =>
        readMarkScheme(paperOf('stepwise-reduction', code, level).scheme).blocks.flatMap((block) => block.rows),
      );
      const stopped = rows.filter(({ slips, wroteText }) => slips.includes('LD-STOPS-EARLY') && /\+\d\.\d\d V/.test(wroteText));
      expect(stopped).not.toEqual([]);
      for (const { wroteText } of stopped) expect(wroteText).not.toMatch(/negative/);
      for (const level of levels) expect(auditPaper(paperOf('stepwise-reduction', code, level)).findings).toEqual([]);
    },
  );

  // 0.0115 mol dm⁻³ × 26.90 cm³: 3.094 × 10⁻⁴ mol to four figures, × 5/2 is 7.74 × 10⁻⁴ mol to three, in 25.0 cm³ 0.0310, not 0.0309 mol dm⁻³.
  it.each([
    ['N9091MM6', 'core'],
    ['206RD2JJ', 'core'],
  ] as const)('accepts what rounding to three, four or five figures on the way gives (%s)', (code, level) => {
    const documents = paperOf('titration-concentration', code, level);
    const answers = readMarkScheme(documents.scheme).blocks.flatMap((block) => block.answers);
    expect(answers.filter((tokens) => tokens.filter(({ kind }) => kind === 'number').length === 3)).not.toEqual([]);
    expect(auditPaper(documents).findings).toEqual([]);
  });

  it('writes a product that both half-equations give as one term, where nothing was cancelled', () => {
    const documents = paperOf('combine-halves', 'HDP19Q1Z', 'stretch');
    const rows = readMarkScheme(documents.scheme).blocks.flatMap((block) => block.rows);
    const left = rows.filter(({ slips }) => slips.includes('HE-H-NOT-CANCELLED'));
    expect(left.map(({ wroteText }) => wroteText)).toEqual(['VO2^+ + 2 H^+ + V^3+ + H2O -> 2 VO^2+ + H2O + 2 H^+']);
    expect(auditPaper(documents).findings).toEqual([]);
  });

  it.each([0, 2, 5, 26, 27, 33, 100, 147, 3119, 4619, 10799, 15029, 17829])(
    'lets no question of a chosen paper answer another, and no letter be right three times running (%i)',
    (paper) => {
      expect(auditPaper(chosenDocuments(paper, kitchen), new Ledger(), true).findings).toEqual([]);
    },
  );

  it('takes a row that is carried on from one part or another apart, and finds a part that it is not carried on from', () => {
    const documents = paperOf('predict-reaction', '64XN17VX', 'core');
    expect(JSON.stringify(documents.scheme)).toContain('carried on from part a or b');
    expect(auditPaper(documents).findings).toEqual([]);
    const scheme = JSON.parse(JSON.stringify(documents.scheme).replace('from part a or b', 'from part a or c'));
    expect(auditPaper({ ...documents, scheme }).findings).not.toEqual([]);
  });

  it.each(['FS311373', 'KNQRCAQH', 'R9588TE5', 'TC0SN0J7'])('takes hydrogen peroxide for no hydrogen (%s)', (code) => {
    const documents = paperDocuments(
      {
        seed: 'findings',
        level: 'stretch',
        support: 'open',
        units: 'dm',
        questions: [{ family: 'stepwise-reduction', answering: 'choice', code }],
      },
      kitchen,
    );
    expect(auditPaper(documents).findings).toEqual([]);
  });
});
