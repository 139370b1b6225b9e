import type { Coded } from './font-program.ts';

/** The character each code is read as. The long arrow is how we draw an arrow; it is read as the ordinary one. */
export function toUnicode(coded: readonly Coded[]): string {
  return cmapOf(
    coded.map(({ codePoint }, i) => ({ code: i + 1, codePoint })),
    4,
  );
}

/** The same for a simple font, whose codes are of one byte. */
export function simpleToUnicode(coded: readonly { readonly code: number; readonly codePoint: number }[]): string {
  return cmapOf(coded, 2);
}

/** @param digits of a code, hexadecimal */
function cmapOf(coded: readonly { readonly code: number; readonly codePoint: number }[], digits: number): string {
  const hex = (value: number): string => value.toString(16).padStart(digits, '0');
  const lines = coded.map(({ code, codePoint }) => `<${hex(code)}> <${Buffer.from(utf16(codePoint)).toString('hex')}>`);
  const sections: string[] = [];
  for (let i = 0; i < lines.length; i += 100) {
    const section = lines.slice(i, i + 100);
    sections.push(`${section.length} beginbfchar\n${section.join('\n')}\nendbfchar`);
  }
  return CMAP.replace('RANGE', `<${hex(0)}> <${'f'.repeat(digits)}>`).replace('MAPPINGS', sections.join('\n'));
}

function utf16(codePoint: number): number[] {
  const text = String.fromCodePoint(READ_AS.get(codePoint) ?? codePoint);
  return Array.from({ length: text.length }, (_, i) => text.charCodeAt(i)).flatMap((unit) => [unit >> 8, unit & 255]);
}

const READ_AS: ReadonlyMap<number, number> = new Map([[0x27f6, 0x2192]]);

const CMAP = `/CIDInit /ProcSet findresource begin
12 dict begin
begincmap
/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def
/CMapName /Adobe-Identity-UCS def
/CMapType 2 def
1 begincodespacerange
RANGE
endcodespacerange
MAPPINGS
endcmap
CMapName currentdict /CMap defineresource pop
end
end`;
