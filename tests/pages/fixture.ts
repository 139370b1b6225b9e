import type { Block, PartBlock } from '../../src/document/block.ts';
import type { Document } from '../../src/document/document.ts';
import { BURETTE, CELL } from './fixture-figures.ts';
import { PLOT_QUESTION } from './plot-question.ts';
import { say } from './say.ts';

/** A realistic question sheet that uses every kind of block and answer space. The setting is invented. */
export const SHEET: Document = {
  title: 'Redox titration and cells',
  language: 'en-GB',
  subject: 'Question sheet',
  kind: 'sheet',
  foot: 'Redox titration and cells',
  blocks: [
    {
      kind: 'head',
      title: 'Redox titration and cells',
      facts: ['electrode potentials, vanadium, titration', '24 minutes (30 with extra time)', '21 marks'],
      cells: ['Name', 'Class', 'Date', 'Marks / 21'],
      note: say('A calculator and the values printed here may be used. Show each step of a calculation.'),
    },
    cellQuestion(),
    ladderQuestion(),
    titrationQuestion(),
    choiceQuestion(),
    PLOT_QUESTION,
  ],
};

function paragraph(line: string): Block {
  return { kind: 'paragraph', content: say(line) };
}

function part(letter: string, marks: number, prompt: string, ...blocks: Block[]): PartBlock {
  return { kind: 'part', letter, marks, blocks: [paragraph(prompt), ...blocks] };
}

function potentials(rows: readonly (readonly [string, string, string])[]): Block {
  return {
    kind: 'given',
    caption: 'Standard electrode potentials',
    blocks: [
      {
        kind: 'table',
        summary: 'Half-cells, their half-equations and standard electrode potentials',
        header: [say('half-cell'), say('half-equation'), say('{E°} / V')],
        rows: rows.map((row) => row.map((cell) => say(cell))),
        rowHeaders: true,
        align: ['start', 'start', 'end'],
      },
    ],
  };
}

function cellQuestion(): Block {
  return {
    kind: 'question',
    number: 1,
    code: 'K7MQ2XA4',
    marks: 6,
    stem: [
      paragraph(
        'A technician joins two half-cells, P and Q, with a wire and a salt bridge. Each half-cell is at standard conditions.',
      ),
      potentials([
        ['P', '{Zn^2+(aq) + 2e^- <=> Zn(s)}', '−0.76'],
        ['Q', '{Cr2O7^2-(aq) + 14H^+(aq) + 6e^- <=> 2Cr^3+(aq) + 7H2O(l)}', '+1.33'],
      ]),
      { kind: 'figure', figure: CELL, caption: say('The cell before the switch is closed') },
    ],
    parts: [
      part('a', 1, 'Calculate the standard cell potential, {E°cell}.', {
        kind: 'answer',
        space: { kind: 'working', marks: 1, symbol: say('{E°cell}'), unit: 'V' },
      }),
      part('b', 2, 'Write the ionic equation for the reaction in the working cell.', {
        kind: 'answer',
        space: { kind: 'equation', arrow: 'forward', count: 1 },
      }),
      part(
        'c',
        2,
        'Explain how electrons move between the half-cells while the cell is working, and why they move in that direction.',
        {
          kind: 'answer',
          space: { kind: 'lines', count: 4 },
        },
      ),
      part('d', 1, 'Give the oxidation number of chromium before and after the reaction.', {
        kind: 'answer',
        space: { kind: 'short', labels: [say('in {Cr2O7^2-}'), say('in {Cr^3+}')] },
      }),
    ],
  };
}

function ladderQuestion(): Block {
  return {
    kind: 'question',
    number: 2,
    code: 'W3PDN8VT',
    marks: 5,
    stem: [
      paragraph(
        'Zinc powder is added to an acidified solution of ammonium vanadate(V). The yellow solution holds {VO2^+}; the blue one holds {VO^2+}.',
      ),
      potentials([
        ['1', '{VO2^+ + 2H^+ + e^- <=> VO^2+ + H2O}', '+1.00'],
        ['2', '{VO^2+ + 2H^+ + e^- <=> V^3+ + H2O}', '+0.34'],
        ['3', '{V^3+ + e^- <=> V^2+}', '−0.26'],
        ['4', '{Zn^2+ + 2e^- <=> Zn}', '−0.76'],
      ]),
      {
        kind: 'paragraph',
        weight: 'caution',
        content: say('**Corrosive.** Vanadate solutions in sulfuric acid burn skin and eyes: eye protection is worn throughout.'),
      },
    ],
    parts: [
      part('a', 2, 'Complete the table for each step of the reduction.', {
        kind: 'answer',
        space: {
          kind: 'table',
          table: {
            kind: 'table',
            summary: 'Steps of the reduction with room for the vanadium species formed and its colour',
            header: [say('step'), say('species formed'), say('colour of the solution')],
            rows: [
              [say('first'), [], []],
              [say('second'), [], []],
              [say('third'), [], []],
            ],
            rowHeaders: true,
            align: ['start', 'start', 'start'],
            widths: [1, 2, 2],
          },
        },
      }),
      part('b', 1, 'Explain why the reduction does not stop at {V^3+}.', { kind: 'answer', space: { kind: 'lines', count: 2 } }),
      part(
        'c',
        2,
        'Tin, {q −0.14 V} for {Sn^2+ + 2e^- <=> Sn}, is used instead of zinc. State the vanadium species at the end and the colour seen.',
        { kind: 'answer', space: { kind: 'short', labels: [say('species'), say('colour')] } },
      ),
    ],
  };
}

function titrationQuestion(): Block {
  return {
    kind: 'question',
    number: 3,
    code: 'R5HZ9CJE',
    marks: 7,
    stem: [
      paragraph(
        'An apprentice finds the iron in a lawn treatment. A sample of {q 5.02 g} is dissolved in dilute sulfuric acid and made up to {q 250.0 cm^3}. Portions of {q 25.0 cm^3} are titrated with potassium manganate(VII), {q 0.0200 mol dm^-3}.',
      ),
      {
        kind: 'given',
        caption: 'Titres',
        blocks: [
          {
            kind: 'table',
            summary: 'Burette readings of three titrations, in cubic centimetres',
            header: [say(''), say('rough'), say('first'), say('second')],
            rows: [
              [say('final reading / cm³'), say('18.90'), say('36.85'), say('18.60')],
              [say('initial reading / cm³'), say('0.00'), say('18.40'), say('0.10')],
              [say('titre / cm³'), say('18.90'), say('18.45'), say('18.50')],
            ],
            rowHeaders: true,
            align: ['start', 'end', 'end', 'end'],
          },
        ],
      },
      { kind: 'figure', figure: BURETTE, caption: say('The burette in the second titration') },
      { kind: 'display', content: say('{MnO4^- + 8H^+ + 5Fe^2+ -> Mn^2+ + 5Fe^3+ + 4H2O}') },
    ],
    parts: [
      part('a', 1, 'Describe the colour change at the end point.', { kind: 'answer', space: { kind: 'lines', count: 1 } }),
      part('b', 4, 'Calculate the concentration of {Fe^2+} in the solution. Give your answer to three significant figures.', {
        kind: 'answer',
        space: { kind: 'working', marks: 4, symbol: say('{c(Fe^2+)}'), unit: 'mol dm^-3' },
      }),
      part(
        'c',
        2,
        'A complete worked answer for another sample starts as below. Fill the gaps.',
        {
          kind: 'working',
          lines: [{ left: say('{n(MnO4^-)}'), right: say('{frac [q 0.0200 mol dm^-3] × [q 21.30 cm^3] | 1000} = {gap 6} mol') }],
        },
        {
          kind: 'list',
          ordered: false,
          items: [
            [paragraph('the ratio {MnO4^-} : {Fe^2+} is 1 : {gap 3}')],
            [paragraph('so {n(Fe^2+)} = {gap 6} {q 10^-3 mol}')],
          ],
        },
      ),
    ],
  };
}

function choiceQuestion(): Block {
  return {
    kind: 'question',
    number: 4,
    code: 'B2YK6TGD',
    marks: 1,
    stem: [],
    parts: [
      {
        kind: 'part',
        marks: 1,
        blocks: [
          paragraph('Which change is a reduction of the metal ion in {[Fe(CN)6]^3-}, in {CuSO4·5H2O} or in {Fe2(SO4)3}?'),
          {
            kind: 'options',
            options: [
              { letter: 'A', content: say('{[Fe(CN)6]^4- -> [Fe(CN)6]^3- + e^-}') },
              { letter: 'B', content: say('{[Fe(CN)6]^3- + e^- -> [Fe(CN)6]^4-}') },
              { letter: 'C', content: say('{Cu^2+ + 4NH3 -> [Cu(NH3)4]^2+}') },
            ],
          },
        ],
      },
    ],
  };
}

export { SCHEME } from './scheme-fixture.ts';
