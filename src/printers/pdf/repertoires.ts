import type { Face } from './fonts.ts';

const DIGITS = '0123456789';
const SMALL = 'abcdefghijklmnopqrstuvwxyz';
const CAPITALS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const MARKS = ' .,;:!?()[]/+-\u2212–—‘’“”×·•°%=\'"&';
const SYMBOLS = '|‖½→<>≥≤≈±*#Δλα^_';

/** Characters expected of each face: what most documents use, so that they share one subset. Others are added when they are met. */
export const REPERTOIRES: Readonly<Record<Face, string>> = {
  regular: MARKS + DIGITS + CAPITALS + SMALL + SYMBOLS,
  medium: `${DIGITS}+\u2212cel`,
  strong: MARKS + DIGITS + CAPITALS + SMALL,
  italic: 'EcnVmMFTGHSKQRktpqz',
  strongItalic: 'EcnVm',
  light: MARKS + DIGITS + CAPITALS + SMALL,
  lightItalic: 'EcnVmMFTGHSKQR',
  symbol: '⇌⟶',
};
