import type { Block, SchemeBlock, SchemePoint, SchemeSeen } from '../../src/document/block.ts';
import type { Document } from '../../src/document/document.ts';
import { say } from './say.ts';

/** The mark scheme of the fixture sheet: every kind of line a scheme can hold. The setting is invented. */
export const SCHEME: Document = {
  title: 'Redox titration and cells: mark scheme',
  language: 'en-GB',
  subject: 'Mark scheme',
  kind: 'scheme',
  foot: 'Redox titration and cells: mark scheme',
  blocks: [
    {
      kind: 'head',
      title: 'Redox titration and cells',
      facts: ['Mark scheme', '24 minutes (30 with extra time)', '19 marks'],
      cells: [],
    },
    {
      kind: 'strip',
      facts: [
        { label: 'Marks', value: say('19') },
        { label: 'Time', value: say('24 minutes (30 with extra time)') },
        { label: 'Table', value: say('couplet, 25 °C, 54 couples') },
        { label: 'Seed', value: say('calm otter 7') },
        { label: 'Version', value: say('0.1.0') },
      ],
    },
    heading(2, 'What this sheet can show you'),
    {
      kind: 'list',
      ordered: false,
      items: [
        [paragraph('signs of {E°} dropped before subtracting: **1a**, **2b**')],
        [paragraph('a half-equation multiplied and its potential multiplied with it: **1a**')],
        [paragraph('the aliquot taken for the whole flask: **3b**')],
      ],
    },
    heading(2, 'Answers'),
    heading(3, 'Question 1: cell e.m.f.'),
    emf(),
    equation(),
    flow(),
    heading(3, 'Question 2: stepwise reduction'),
    steps(),
    heading(3, 'Question 3: titration'),
    endPoint(),
    concentration(),
    heading(2, 'Hazards for staff'),
    paragraph(
      'Written work, not an instruction to do it. Anyone carrying it out follows the employer’s risk assessment and local rules.',
    ),
    {
      kind: 'list',
      ordered: false,
      items: [
        [
          paragraph(
            '**Ammonium vanadate(V)** toxic if swallowed, harmful if inhaled (H301, H332); check the supplier’s current safety data.',
          ),
        ],
        [paragraph('**Sulfuric acid** of {q 2 mol dm^-3} corrosive (H314).')],
      ],
    },
    {
      kind: 'small-print',
      paragraphs: [
        say('seed calm otter 7 · version 0.1.0 · table couplet 8f3a11c0 · wording 51d02e7b · level core · support open'),
        say('1 cell-emf K7MQ2XA4 · 2 stepwise-reduction W3PDN8VT · 3 titration-concentration R5HZ9CJE · 4 choice B2YK6TGD'),
      ],
    },
  ],
};

function paragraph(line: string): Block {
  return { kind: 'paragraph', content: say(line) };
}

function heading(level: 2 | 3, words: string): Block {
  return { kind: 'heading', level, content: say(words) };
}

function point(
  earns: string,
  more: { also?: string[]; not?: string[]; ignore?: string[]; carries?: boolean; given?: string[] } = {},
): SchemePoint {
  const lines = (list: string[] | undefined) => (list ?? []).map((line) => say(line));
  return {
    earns: say(earns),
    also: lines(more.also),
    not: lines(more.not),
    ignore: lines(more.ignore),
    carries: more.carries ?? false,
    ...(more.given ? { given: more.given } : {}),
  };
}

function seen(wrote: string, happened: string, earns: string): SchemeSeen {
  return { wrote: say(wrote), happened: say(happened), earns: say(earns) };
}

function emf(): SchemeBlock {
  return {
    kind: 'scheme',
    label: '1a',
    marks: 1,
    answer: [say('{q +2.09 V}')],
    points: [
      point('{q 2.09 V}', { also: ['{q +2.09 V}; a right subtraction with the figures of the sheet'], not: ['{q −2.09 V}'] }),
    ],
    worked: [
      {
        kind: 'working',
        lines: [
          { left: say('{E°cell}'), right: say('{E°}(reduced) − {E°}(oxidised)') },
          { left: [], right: say('{q +1.33 V} − ({q −0.76 V})') },
          { left: [], right: say('{q +2.09 V}') },
        ],
      },
    ],
    seen: [
      seen(
        '{q +0.57 V}',
        'The minus sign of {q −0.76 V} was dropped, so the two were subtracted as sizes.',
        '0 of 1; b and c are marked as usual',
      ),
      seen('{q +3.61 V}', 'The zinc half-equation was multiplied by three and its potential with it.', '0 of 1'),
    ],
  };
}

function equation(): SchemeBlock {
  return {
    kind: 'scheme',
    label: '1b',
    marks: 2,
    answer: [say('{Cr2O7^2- + 14H^+ + 3Zn -> 2Cr^3+ + 7H2O + 3Zn^2+}')],
    points: [
      point('right species on each side: {Zn} and {Cr2O7^2-} react'),
      point('balanced, with the electrons made equal and cancelled', {
        also: ['multiples; {Cr2O7^2- + 14H^+ + 3Zn <=> 2Cr^3+ + 7H2O + 3Zn^2+}'],
        not: ['electrons, or a species on both sides, left in'],
        ignore: ['state symbols; a reversible arrow'],
        carries: true,
        given: ['completion'],
      }),
    ],
    worked: [],
    seen: [
      seen(
        '{2Cr^3+ + 7H2O + 3Zn^2+ -> Cr2O7^2- + 14H^+ + 3Zn}',
        'Both half-equations were turned round.',
        '1 of 2: the balancing is right',
      ),
    ],
  };
}

function flow(): SchemeBlock {
  return {
    kind: 'scheme',
    label: '1c',
    marks: 2,
    answer: [
      say(
        'from P to Q, through the wire, because P has the less positive {E°} ({q −0.76 V} against {q +1.33 V}), so oxidation there sets electrons free',
      ),
    ],
    points: [
      point('from the electrode of P to the electrode of Q, through the wire', {
        also: ['through the external circuit'],
        not: ['through the salt bridge, or through the solutions'],
      }),
      point('P has the less positive (more negative) {E°}, so {Zn} is oxidised there and gives up electrons', {
        not: ['only “opposites attract”, or only a statement of sizes without signs'],
      }),
    ],
    worked: [],
    seen: [],
  };
}

function steps(): SchemeBlock {
  return {
    kind: 'scheme',
    label: '2a',
    marks: 2,
    answer: [say('{VO^2+}, blue; {V^3+}, green; {V^2+}, violet')],
    points: [
      point('the three species in order'),
      point('the three colours in order', {
        also: ['lilac, purple or mauve for violet'],
        ignore: ['a green seen on the way from yellow to blue'],
      }),
    ],
    worked: [
      { kind: 'display', content: say('{2VO2^+ + 4H^+ + Zn -> 2VO^2+ + 2H2O + Zn^2+}') },
      {
        kind: 'paragraph',
        content: say('Each step has {E°cell} above {q 0.10 V}, down to {V^3+ + e^- <=> V^2+} at {q +0.50 V}.'),
      },
    ],
    seen: [
      seen(
        'stops at {V^3+}, green',
        'The sign of {q −0.26 V} was read as a bar to any reaction; only the difference counts.',
        '1 of 2: a right start',
      ),
      seen('{V^2+} at once', 'The ladder was jumped; each step gives up one electron to the next.', '0 of 2'),
    ],
  };
}

function endPoint(): SchemeBlock {
  return {
    kind: 'scheme',
    label: '3a',
    marks: 1,
    answer: [say('colourless to pale pink')],
    points: [
      point('first permanent pink', {
        also: ['(very pale) green or yellow to pink'],
        not: ['pink to colourless', 'purple'],
        ignore: ['shade of pink'],
      }),
    ],
    worked: [],
    seen: [seen('purple to colourless', 'The burette and the flask were exchanged in thought.', '0 of 1')],
  };
}

function concentration(): SchemeBlock {
  return {
    kind: 'scheme',
    label: '3b',
    marks: 4,
    answer: [say('{q 0.0739 mol dm^-3} (accept 0.0738 to {q 0.0740 mol dm^-3})')],
    points: [
      point('mean titre {q 18.48 cm^3}', { also: ['{q 18.475 cm^3}'], not: ['a mean that takes in the rough titre'] }),
      point('amount of {MnO4^-} = {q 3.70×10^-4 mol}', { carries: true }),
      point('amount of {Fe^2+} = {q 1.85×10^-3 mol}', { also: ['five times the line above'], carries: true }),
      point('{q 0.0739 mol dm^-3}, to three significant figures', { carries: true }),
    ],
    worked: [
      {
        kind: 'working',
        lines: [
          { left: say('{n(MnO4^-)}'), right: say('{frac [q 0.0200 mol dm^-3] × [q 18.48 cm^3] | 1000} = {q 3.696×10^-4 mol}') },
          { left: say('{n(Fe^2+)}'), right: say('5 × {q 3.696×10^-4 mol} = {q 1.848×10^-3 mol}') },
          { left: say('{c(Fe^2+)}'), right: say('{frac [q 1.848×10^-3 mol] | [q 0.0250 dm^3]} = {q 0.0739 mol dm^-3}') },
        ],
      },
    ],
    seen: [
      seen('{q 0.0148 mol dm^-3}', 'The ratio 1 : 5 was left out.', '3 of 4'),
      seen('{q 0.00296 mol dm^-3}', 'The ratio was turned round: divided by five.', '3 of 4'),
      seen('{q 0.0745 mol dm^-3}', 'The rough titre was taken into the mean.', '3 of 4'),
      seen('{q 0.00739 mol dm^-3}', 'The amount in the portion was divided by the {q 250 cm^3} of the flask.', '3 of 4'),
    ],
  };
}
