import type { Reading } from '../read-pdf.ts';
import { CONTENT_RULES } from './content-rules.ts';
import { FEATURE_RULES } from './feature-rules.ts';
import { FONT_RULES } from './font-rules.ts';
import { LANGUAGE_RULES } from './language-rules.ts';
import { MEANING_RULES } from './meaning-rules.ts';
import { METADATA_RULES } from './metadata-rules.ts';
import { NESTING_RULES } from './nesting-rules.ts';
import type { Rule } from './rule.ts';

/** Every rule of PDF/UA-1 that a machine can check. */
export const RULES: readonly Rule[] = [
  ...METADATA_RULES,
  ...CONTENT_RULES,
  ...LANGUAGE_RULES,
  ...NESTING_RULES,
  ...MEANING_RULES,
  ...FEATURE_RULES,
  ...FONT_RULES,
];

/** Rules that a file breaks, with the places. */
export function brokenRules(reading: Reading): readonly { readonly rule: Rule; readonly places: readonly string[] }[] {
  return RULES.flatMap((rule) => {
    const places = rule.check(reading);
    return places.length > 0 ? [{ rule, places }] : [];
  });
}
