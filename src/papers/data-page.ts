import { elementsIn } from '../chemistry/composition.ts';
import type { Couple } from '../chemistry/couple.ts';
import { parseFormula } from '../chemistry/parse-formula.ts';
import type { Block } from '../document/block.ts';
import type { Document } from '../document/document.ts';
import type { Inline } from '../document/inline.ts';
import { equation, quantity, species, text } from '../document/inlines.ts';
import { symbol } from '../document/symbols.ts';
import type { Wording } from '../document/wording.ts';
import type { Words } from '../document/words.ts';
import { printDecimal } from '../exact/decimal.ts';
import type { Tables } from '../potentials/tables.ts';
import { inUse } from '../questions/half-cell.ts';
import { speciesIn } from '../questions/species-in.ts';
import { bare } from '../questions/without-states.ts';
import { drawsFrom } from '../random/draws.ts';
import type { Paper } from './paper.ts';
import { CONSTANTS } from './sheet-constants.ts';

/** The table that comes with the product goes without saying. */
const USUAL = 'default';
/** Couples on the page beyond those that the questions print, so that the page does not tell which are needed. */
const DECOYS = 6;

/**
 * One page of data for a whole paper: potentials as printed on the sheet with some that are not needed, relative atomic masses to one
 * decimal, constants. While a question asks for a half-equation, its row names the couple only.
 */
export function dataPage(paper: Paper, tables: Tables, wording: Wording): Document {
  const words = wording.words('data-page');
  const title = `${paper.title}: data`;
  return {
    title,
    language: 'en-GB',
    subject: 'Data page',
    kind: 'scheme',
    foot: title,
    blocks: [
      {
        kind: 'head',
        title: paper.title,
        facts: tables.name === USUAL ? ['Data'] : ['Data', tables.name],
        cells: [],
        note: words.inline('note'),
      },
      { kind: 'heading', level: 2, content: words.inline('potentials') },
      potentials(paper, tables, words),
      { kind: 'heading', level: 2, content: words.inline('masses') },
      masses(paper, tables, words),
      { kind: 'heading', level: 2, content: words.inline('constants') },
      constants(words),
    ],
  };
}

function facts(paper: Paper, kind: 'gives' | 'asks'): Set<string> {
  const keys = paper.questions.flatMap((question) => question[kind]);
  return new Set(keys.flatMap((key) => (key.startsWith('half:') ? [key.slice('half:'.length)] : [])));
}

function potentials(paper: Paper, tables: Tables, words: Words): Block {
  const [given, asked] = [facts(paper, 'gives'), facts(paper, 'asks')];
  const needed = tables.couples.filter(({ id }) => given.has(id) || asked.has(id));
  const others = tables.couples.filter((couple) => !needed.includes(couple) && inUse(couple) && couple.medium !== 'alkali');
  const decoys = drawsFrom(JSON.stringify(['data page', paper.request.seed]))
    .shuffle(others)
    .slice(0, DECOYS);
  const rows = tables.couples.filter((couple) => needed.includes(couple) || decoys.includes(couple));
  return {
    kind: 'table',
    summary: 'Standard electrode potentials at 298 K, most negative first',
    header: [
      words.inline(rows.some(({ id }) => asked.has(id)) ? 'half-equation-or-couple' : 'half-equation'),
      [symbol('E°'), text(' / V')],
    ],
    rows: rows.map((couple) => [rowOf(couple, asked.has(couple.id)), [quantity(printDecimal(couple.printed, true), '')]]),
    rowHeaders: false,
    align: ['start', 'end'],
  };
}

function rowOf(couple: Couple, isAsked: boolean): Inline[] {
  return isAsked
    ? [species(bare(couple.oxidised)), text(' / '), species(bare(couple.reduced))]
    : [equation(couple.half, 'reversible')];
}

/** The elements of every species that the paper names. */
function masses(paper: Paper, tables: Tables, words: Words): Block {
  const named = new Set(
    paper.questions.flatMap((question) => [...speciesIn(question)]).flatMap((key) => elementsIn(parseFormula(key))),
  );
  const rows = [...named].sort().flatMap((element) => {
    const mass = tables.atomicMasses.get(element)?.printed;
    return mass ? [[[text(element)], [text(printDecimal(mass))]]] : [];
  });
  return {
    kind: 'table',
    summary: 'Relative atomic masses',
    header: [words.inline('element'), [symbol('Ar')]],
    rows,
    rowHeaders: true,
    align: ['start', 'end'],
    folds: true,
  };
}

function constants(words: Words): Block {
  return {
    kind: 'table',
    summary: 'Constants',
    header: [words.inline('constant'), words.inline('value')],
    rows: CONSTANTS.map(({ name, number, unit }) => [[text(name)], [quantity(number, unit)]]),
    rowHeaders: true,
    align: ['start', 'end'],
  };
}
