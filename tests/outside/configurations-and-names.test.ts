import { describe, expect, it } from 'vitest';
import { complexOf, dElectrons, unpairedInComplex } from '../../src/chemistry/complex.ts';
import { electronConfiguration } from '../../src/chemistry/electron-configuration.ts';
import { elementOf } from '../../src/chemistry/elements.ts';
import { nameOf } from '../../src/chemistry/name.ts';
import { parseFormula } from '../../src/chemistry/parse-formula.ts';
import { checkedCases } from './left-out.ts';

interface Particle {
  readonly species?: string;
  readonly Z?: number;
  readonly complex?: string;
  readonly d?: number;
  readonly spin?: 'high' | 'low';
}
interface Electrons {
  readonly configuration?: string;
  readonly unpaired_electrons?: number;
}
interface Name {
  readonly name: string;
  readonly name_iupac_2005_style?: string;
  readonly coordination_number?: number;
  readonly oxidation_state?: number;
}

describe('published electron configurations', () => {
  const parts = (text: string) => text.replace(']', '] ').split(/\s+/).filter(Boolean).toSorted();
  const atoms = checkedCases<Particle, Electrons>('electron-configuration').filter((each) => each.given.species !== undefined);
  it.each(atoms)('of $given.species are ours: $id, $source', ({ given, answer }) => {
    const found = electronConfiguration(parseFormula(given.species!));
    expect(elementOf(found.symbol).number).toBe(given.Z);
    // Sources differ in the order of subshells.
    expect(parts(answer.configuration!.startsWith('1s') ? found.full : found.text)).toEqual(parts(answer.configuration!));
  });
  const complexes = checkedCases<Particle, Electrons>('electron-configuration').filter(
    (each) => each.given.complex !== undefined,
  );
  it.each(complexes)('and unpaired electrons of $given.complex are ours: $id, $source', ({ given, answer }) => {
    const complex = complexOf(parseFormula(given.complex!));
    const electrons = dElectrons(complex.centre, Number(complex.oxidationNumber.n));
    expect(electrons).toBe(given.d);
    expect(unpairedInComplex(electrons, complex.shape!, given.spin)).toBe(answer.unpaired_electrons);
  });
  it('are all looked at', () => {
    expect(atoms.length + complexes.length).toBe(28);
  });
});

describe('published names of complexes', () => {
  it.each(checkedCases<{ readonly formula: string }, Name>('complex-name'))(
    'are ours: $given.formula is $answer.name, $source',
    ({ given, answer }) => {
      const found = nameOf(parseFormula(given.formula));
      const modern = answer.name_iupac_2005_style ?? answer.name;
      expect(found.name).toBe(modern);
      if (answer.name_iupac_2005_style) expect(found.tradeName ?? found.name).toBe(answer.name);
      if (answer.coordination_number) expect(found.coordinationNumber).toBe(answer.coordination_number);
      if (answer.oxidation_state) expect(found.oxidationNumber?.toString()).toBe(String(answer.oxidation_state));
    },
  );
});
