/** Constants as sheets print them, rounded as schools use them (common practice, no source); calculators use CODATA's values instead. */
export const CONSTANTS: readonly { readonly name: string; readonly number: string; readonly unit: string }[] = [
  { name: 'Faraday constant', number: '96 500', unit: 'C mol^-1' },
  { name: 'gas constant', number: '8.31', unit: 'J K^-1 mol^-1' },
  { name: 'Planck constant', number: '6.63 × 10^-34', unit: 'J s' },
  { name: 'speed of light', number: '3.00 × 10^8', unit: 'm s^-1' },
];
