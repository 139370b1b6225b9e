import type { Units } from './question.ts';

/** Units as they are printed, in caret text. Both presets count alike: 1 cm³ is 1 mL, 1 dm³ is 1 L. */
export function unitNames(units: Units): { readonly volume: string; readonly concentration: string } {
  return units === 'dm' ? { volume: 'cm^3', concentration: 'mol dm^-3' } : { volume: 'mL', concentration: 'mol/L' };
}
