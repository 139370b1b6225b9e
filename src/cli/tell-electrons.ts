import { elementOf } from '../chemistry/elements.ts';
import { chargeText } from '../chemistry/oxidation-rules.ts';
import { keyOf } from '../chemistry/write-formula.ts';
import type { Configured } from './calculators/electrons.ts';
import { lines } from './tell.ts';

/** The configuration short and in full, its unpaired electrons, and whether the element is a transition element. */
export function tellElectrons({ formula, configuration, transition }: Configured): string {
  const { symbol, charge, text, full, unpaired } = configuration;
  const key = keyOf(formula);
  const ion = charge === 0 ? 'atom' : `${chargeText(charge)} ion`;
  const whose = key === symbol || charge === formula.charge ? '' : ` (the ${elementOf(symbol).name} ${ion} in it)`;
  const ligands = charge !== formula.charge || key.includes('[') ? '; in a complex, ligands may pair some of them' : '';
  return lines(
    `${key}${whose}: ${text}`,
    full === text ? undefined : `  in full: ${full}`,
    `  ${unpaired} unpaired in the free ${charge === 0 ? 'atom' : 'ion'}${ligands}`,
    `  ${elementOf(symbol).name}: ${definitions(transition)} (${transition.because})`,
  );
}

function definitions({ school, iupac }: Configured['transition']): string {
  if (school) return 'a transition element';
  return iupac ? 'no transition element in school terms, though one by the IUPAC definition' : 'no transition element';
}
