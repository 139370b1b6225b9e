import { command } from '../command.ts';

export const families = command({
  name: 'families',
  summary: 'list the families of questions, or tell all about one',
  operand: { name: 'ID', help: 'a family, such as `cell-emf`', count: 'at most one' },
  options: ['sample', 'check', 'table', 'wording', 'json'],
  example: { line: 'couplet families cell-emf', does: 'its topics, marks, minutes, levels and misconceptions' },
  run: async (given, [id], desk) => {
    if (given.sample !== undefined || given.check) {
      const { tellSample } = await import('../tell-sample.ts');
      const failed = tellSample(given, id, desk);
      if (given.check && failed > 0) process.exitCode = 1;
      return;
    }
    const { familyFacts } = await import('../family-facts.ts');
    const { briefly, fully } = await import('../tell-families.ts');
    const facts = familyFacts(id, given, desk);
    if (given.json) desk.print(JSON.stringify(id === undefined ? facts : facts[0], undefined, 2));
    else desk.print(id === undefined ? briefly(facts) : fully(facts[0]!));
  },
});
