import { type EndPoint, endPointOf } from '../chemistry/colours.ts';
import { Unreadable } from '../engine/case.ts';
import type { Fraction } from '../exact/fraction.ts';
import type { ReadQuestion } from '../reading/sheet.ts';
import { runTokensText } from '../reading/token-text.ts';
import { everyToken, type Token } from '../reading/tokens.ts';
import { type Half, halvesTold } from './halves-told.ts';

/** All that a titration's sheet says, read and sorted. Volumes as printed (cm³ or mL). */
export interface Titration {
  readonly known: string;
  readonly found: string;
  readonly concentration: Fraction;
  readonly portion: Fraction;
  readonly portionText: string;
  readonly titre: Fraction;
  readonly knownVolume: Fraction;
  readonly foundVolume: Fraction;
  readonly acid: Fraction | undefined;
  readonly dilution:
    | { readonly sample: Fraction; readonly flask: Fraction; readonly sampleText: string; readonly flaskText: string }
    | undefined;
  readonly oxidant: Half;
  readonly reductant: Half;
  readonly titrant: { readonly reacts: string; readonly product: string };
  readonly units: { readonly concentration: string; readonly volume: string; readonly litre: string };
  readonly end: EndPoint | undefined;
}

export function titrationIn(question: ReadQuestion): Titration {
  const readings = readingsIn(question);
  const { titrantName, knownName, known } = readings;
  const knownIsTitrant = titrantName === knownName;
  const found = foundIn(question, known);
  const halves = halvesTold(question, known, found);
  if (!halves) throw new Unreadable('which of the two is the oxidant');
  const [oxidant, reductant] = halves;
  const [titrantKey, analyteKey] = knownIsTitrant ? [known, found] : [found, known];
  const product = titrantKey === oxidant.oxidised ? oxidant.reduced : reductant.oxidised;
  const { portion, titre } = readings;
  return {
    ...readings,
    ...volumesIn(question, readings.volumeUnit),
    found,
    knownVolume: knownIsTitrant ? titre : portion,
    foundVolume: knownIsTitrant ? portion : titre,
    oxidant,
    reductant,
    titrant: { reacts: titrantKey, product },
    units: {
      concentration: readings.concentrationUnit,
      volume: readings.volumeUnit,
      litre: readings.volumeUnit === 'mL' ? 'L' : 'dm^3',
    },
    end: endPointOf(titrantKey, analyteKey, question.stemText),
  };
}

function readingsIn({ tables }: ReadQuestion) {
  const rows = tables.filter(({ header }) => header.join() === 'Reading,Value').flatMap((table) => table.rows);
  const row = (pattern: RegExp) => {
    const cells = rows.find(([what]) => pattern.test(runTokensText(what ?? [])));
    const [value] = everyToken(cells?.[1] ?? [], 'number');
    if (!cells || !value) throw new Unreadable(`a reading like ${pattern.source}`);
    return { text: runTokensText(cells[0]!), tokens: cells[0]!, value };
  };
  const [strength, portion, titre] = [row(/^concentration of/), row(/^volume of .*pipetted$/), row(/^mean titre of/)];
  const [species] = everyToken(strength.tokens, 'species');
  if (!species) throw new Unreadable('the species whose concentration is known');
  return {
    known: species.species.key,
    knownName: / in the (.*) solution$/.exec(strength.text)?.[1],
    titrantName: /^mean titre of (.*) solution$/.exec(titre.text)?.[1],
    concentration: strength.value.number.value,
    concentrationUnit: strength.value.unit,
    portion: portion.value.number.value,
    portionText: portion.value.number.text,
    titre: titre.value.number.value,
    volumeUnit: titre.value.unit,
  };
}

/** The species whose concentration is asked for: named in a prompt that speaks of a concentration. */
function foundIn({ parts }: ReadQuestion, known: string): string {
  for (const { prose } of parts) {
    const [prompt = []] = prose;
    const keys = everyToken(prompt, 'species').map(({ species }) => species.key);
    const other = keys.find((key) => key !== known);
    if (other !== undefined && /concentrat(?:ion|ed)/.test(runTokensText(prompt))) return other;
  }
  throw new Unreadable('the species whose concentration is asked for');
}

/** Volumes told in prose: of acid, and of a sample made up to a flask. */
function volumesIn({ stem }: ReadQuestion, unit: string) {
  const told = stem
    .flat()
    .flatMap((token, at, all) => (token.kind === 'number' && token.unit === unit ? [{ token, before: words(all[at - 1]) }] : []));
  const flask = told.findIndex(({ before }) => / made up to $/.test(before));
  const sample = flask > 0 ? told[flask - 1] : undefined;
  const acid = told.find((each, at) => at !== flask && each !== sample);
  return {
    acid: acid?.token.number.value,
    dilution:
      sample && told[flask]
        ? {
            sample: sample.token.number.value,
            flask: told[flask].token.number.value,
            sampleText: sample.token.number.text,
            flaskText: told[flask].token.number.text,
          }
        : undefined,
  };
}

const words = (token: Token | undefined): string => (token?.kind === 'words' ? token.text : '');
