import type { OpenPdf } from './mutate.ts';

type Mutation = (pdf: OpenPdf) => unknown;

const CATALOG = /\/Type \/Catalog/;
const PAGE = /\/Type \/Page\n/;
const XMP = /\/Type \/Metadata/;
const of = (type: string): RegExp => new RegExp(`/S /${type}\n`);

/** Changes the type of the first element of a type, or of all. */
const retype =
  (from: string, to: string): Mutation =>
  (pdf) =>
    pdf.editFirst(of(from), `/S /${from}\n`, `/S /${to}\n`);
const retypeAll =
  (from: string, to: string): Mutation =>
  (pdf) =>
    pdf.editAll(of(from), `/S /${from}\n`, `/S /${to}\n`);
const all =
  (...mutations: readonly Mutation[]): Mutation =>
  (pdf) => {
    for (const mutate of mutations) mutate(pdf);
  };
const xmp =
  (from: string | RegExp, to: string): Mutation =>
  (pdf) =>
    pdf.stream(XMP, (text) => text.replaceAll(from, to));
const noLanguage: Mutation = (pdf) => pdf.editFirst(CATALOG, '/Lang (en-GB)\n', '');
const catalog =
  (entry: string): Mutation =>
  (pdf) =>
    pdf.entry(CATALOG, entry);
const role =
  (map: string): Mutation =>
  (pdf) =>
    pdf.entry(/\/Type \/StructTreeRoot/, `/RoleMap << ${map} >>`);
const annotation =
  (subtype: string): Mutation =>
  (pdf) =>
    pdf.entry(PAGE, `/Annots [${pdf.add(`<< /Type /Annot /Subtype /${subtype} /Rect [0 0 9 9] >>`)} 0 R]`);
const object =
  (text: string): Mutation =>
  (pdf) =>
    pdf.add(text);
const font =
  (from: string | RegExp, to: string): Mutation =>
  (pdf) =>
    pdf.editFirst(/\/Subtype \/Type0/, from, to);

/** Puts a new element of a type behind, or at a place among, the children of the first element of a type. */
const insert =
  (parent: string, type: string, at: number): Mutation =>
  (pdf) => {
    const number = pdf.find(of(parent))[0]!;
    const added = pdf.add(`<<\n/S /${type}\n/P ${number} 0 R\n/K []\n>>`);
    const kids = /\/K \[([^\]]*)\]/.exec(pdf.objects.get(number)!)![1]!.match(/\d+ 0 R/g)!;
    kids.splice(at, 0, `${added} 0 R`);
    pdf.edit(number, /\/K \[[^\]]*\]/, `/K [${kids.join(' ')}]`);
  };
const cmap =
  (rewrite: (text: string) => string): Mutation =>
  (pdf) => {
    const number = Number(/\/ToUnicode (\d+)/.exec(pdf.objects.get(pdf.find(/\/Subtype \/Type0/)[0]!)!)![1]);
    pdf.edit(number, '<<', '<<\n/Cmap true');
    pdf.stream(/\/Cmap true/, rewrite);
  };

const inSpan = (key: string): Mutation =>
  all(noLanguage, (pdf) => pdf.content((text) => text.replace(/\bBT/, `/Span <</${key} (x)>> BDC BT`).replace(/\bET/, 'ET EMC')));

/** For each rule of PDF/UA-1 a change to a file of ours after which the rule is broken. */
export const MUTATIONS: Readonly<Record<string, Mutation>> = {
  '5-1': xmp('http://www.aiim.org/pdfua/ns/id/', 'http://example.org/other/'),
  '5-2': xmp('<pdfuaid:part>1<', '<pdfuaid:part>2<'),
  '5-3': xmp('pdfuaid', 'ua'),
  '5-4': all(xmp('pdfuaid', 'ua'), xmp('<ua:part>', '<ua:amd>2020</ua:amd><ua:part>')),
  '5-5': all(xmp('pdfuaid', 'ua'), xmp('<ua:part>', '<ua:corr>1</ua:corr><ua:part>')),
  '6.1-1': (pdf) => {
    pdf.header = '%PDF-2.0';
  },
  '6.2-1': (pdf) => pdf.editFirst(/\/Marked true/, 'true', 'false'),
  '7.1-1': (pdf) => pdf.content((text) => text.replace(/\bBT/, '/Artifact BMC BT').replace(/\bET/, 'ET EMC')),
  '7.1-2': (pdf) => pdf.content((text) => text.replace(/\/H1 <<[^>]*>> BDC/, '/Artifact BMC $&').replace('EMC', 'EMC EMC')),
  '7.1-3': (pdf) => pdf.content((text) => text.replace(/\/H1 <<[^>]*>> BDC/, '/H1 BMC')),
  '7.1-4': (pdf) => pdf.editFirst(/\/Marked true/, '/Marked true', '/Marked true\n/Suspects true'),
  '7.1-5': retype('Sect', 'Chapter'),
  '7.1-6': role('/Chapter /Story /Story /Chapter'),
  '7.1-7': role('/P /Span'),
  '7.1-8': (pdf) => pdf.editFirst(CATALOG, /\/Metadata \d+ 0 R\n/, ''),
  '7.1-9': xmp(/<dc:title>[\s\S]*<\/dc:title>/g, ''),
  '7.1-10': (pdf) => pdf.editFirst(/\/DisplayDocTitle true/, 'true', 'false'),
  '7.1-11': (pdf) => pdf.editFirst(CATALOG, /\/StructTreeRoot \d+ 0 R\n/, ''),
  '7.1-12': (pdf) => pdf.editFirst(of('H2'), /\/P \d+ 0 R\n/, ''),
  '7.2-2': noLanguage,
  '7.2-3': retype('THead', 'P'),
  '7.2-4': retype('THead', 'Div'),
  '7.2-5': retype('Table', 'Div'),
  '7.2-6': retype('Table', 'Div'),
  '7.2-7': all(retype('Table', 'Div'), retype('THead', 'TFoot')),
  '7.2-8': retype('TR', 'Div'),
  '7.2-9': retypeAll('TR', 'Div'),
  '7.2-10': retype('TD', 'P'),
  '7.2-11': retype('TBody', 'THead'),
  '7.2-12': all(retype('TBody', 'TFoot'), retype('THead', 'TFoot')),
  '7.2-13': all(retype('THead', 'TFoot'), retype('TBody', 'Div')),
  '7.2-14': retype('TBody', 'Div'),
  '7.2-15': (pdf) => pdf.editFirst(of('TH'), '/Scope', '/RowSpan 2\n/Scope'),
  '7.2-16': insert('Table', 'Caption', 1),
  '7.2-17': retype('L', 'Div'),
  '7.2-18': retype('LI', 'Div'),
  '7.2-19': retype('LI', 'P'),
  '7.2-20': retype('LBody', 'P'),
  '7.2-21': all(noLanguage, (pdf) => pdf.entry(of('Formula'), '/ActualText (x)')),
  '7.2-22': noLanguage,
  '7.2-23': all(noLanguage, (pdf) => pdf.entry(of('P'), '/E (x)')),
  '7.2-24': all(noLanguage, (pdf) => pdf.entry(PAGE, `/Annots [${pdf.add('<< /Subtype /Text /Contents (x) >>')} 0 R]`)),
  '7.2-25': all(noLanguage, (pdf) => pdf.entry(PAGE, `/Annots [${pdf.add('<< /Subtype /Widget /TU (x) >>')} 0 R]`)),
  '7.2-26': retype('Sect', 'TOCI'),
  '7.2-27': retype('Sect', 'TOC'),
  '7.2-28': all(retype('L', 'TOC'), insert('TOC', 'Caption', 1)),
  '7.2-29': (pdf) => pdf.editFirst(CATALOG, 'en-GB', 'English (British)'.replace(/[()]/g, '_')),
  '7.2-30': inSpan('ActualText'),
  '7.2-31': inSpan('Alt'),
  '7.2-32': inSpan('E'),
  '7.2-33': noLanguage,
  '7.2-34': noLanguage,
  '7.2-36': insert('THead', 'P', 0),
  '7.2-37': insert('TBody', 'P', 0),
  '7.2-38': all(retype('TBody', 'TFoot'), insert('TFoot', 'P', 0)),
  '7.2-39': all(insert('Table', 'Caption', 0), insert('Table', 'Caption', 0)),
  '7.2-40': insert('L', 'Caption', 1),
  '7.2-41': insert('TR', 'TD', 0),
  '7.2-42': insert('TR', 'TD', 0),
  '7.2-43': insert('TR', 'TD', 0),
  '7.3-1': (pdf) => pdf.editFirst(of('Figure'), /\/Alt \([^)]*\)\n/, ''),
  '7.4.2-1': retype('H1', 'H2'),
  '7.4.4-1': all(insert('Sect', 'H', 0), insert('Sect', 'H', 0)),
  '7.4.4-2': retype('H2', 'H'),
  '7.4.4-3': retype('H2', 'H'),
  '7.5-1': (pdf) => pdf.editFirst(of('TH'), /\/Scope \/\w+\n/, ''),
  '7.5-2': (pdf) => pdf.entry(of('TD'), '/A << /O /Table /Headers [(nowhere)] >>'),
  '7.7-1': (pdf) => pdf.editFirst(of('Formula'), /\/Alt \([^)]*\)\n/, ''),
  '7.9-1': retype('P', 'Note'),
  '7.9-2': all(retype('P', 'Note'), retype('P', 'Note'), (pdf) => pdf.editAll(of('Note'), '<<', '<<\n/ID (one)')),
  '7.10-1': catalog('/OCProperties << /D << >> >>'),
  '7.10-2': catalog('/OCProperties << /D << /AS [] >> >>'),
  '7.11-1': object('<< /Type /Filespec /EF << >> >>'),
  '7.15-1': object('<< /XFA [] >>'),
  '7.18.1-1': annotation('Text'),
  '7.18.1-2': annotation('Text'),
  '7.18.1-3': annotation('Widget'),
  '7.18.2-1': annotation('TrapNet'),
  '7.18.3-1': all(annotation('Link'), (pdf) => pdf.editFirst(PAGE, '/Tabs /S', '/Tabs /R')),
  '7.18.4-1': annotation('Widget'),
  '7.18.4-2': retype('P', 'Form'),
  '7.18.5-1': annotation('Link'),
  '7.18.5-2': annotation('Link'),
  '7.18.6.2-1': object('<< /S /MCD >>'),
  '7.18.6.2-2': object('<< /S /MCD >>'),
  '7.18.8-1': annotation('PrinterMark'),
  '7.20-1': object('<< /Subtype /Form /Ref << >> >>'),
  '7.20-2': object('<< /Subtype /Form >>'),
  '7.21.3.1-1': font('Identity-H', 'UniJIS-UTF16-H'),
  '7.21.3.2-1': (pdf) => pdf.editFirst(/\/CIDToGIDMap/, '/CIDToGIDMap /Identity\n', ''),
  '7.21.3.3-1': font('Identity-H', 'Our-CMap'),
  '7.21.3.3-2': font('Identity-H', 'Our-CMap'),
  '7.21.3.3-3': font('Identity-H', 'Our-CMap'),
  '7.21.4.1-1': (pdf) => pdf.editFirst(/\/FontFile3/, /\/FontFile3 \d+ 0 R\n/, ''),
  '7.21.4.1-2': (pdf) => pdf.content((text) => text.replace(/<[0-9a-f]{4}/, '<7fff')),
  '7.21.4.2-1': font('/Subtype /Type0', '/Subtype /Type1'),
  '7.21.4.2-2': (pdf) => pdf.entry(/\/FontFile3/, `/CIDSet ${pdf.add('<< >>')} 0 R`),
  '7.21.5-1': (pdf) => pdf.editAll(/\/Subtype \/CIDFontType0\n/, /\/W \[0 \[[\d.]+ [\d.]+ /, '/W [0 [0 77 '),
  '7.21.6-1': font('/Subtype /Type0', '/Subtype /TrueType'),
  '7.21.6-2': font('/Subtype /Type0', '/Subtype /TrueType'),
  '7.21.6-3': font('/Subtype /Type0', '/Subtype /TrueType'),
  '7.21.6-4': font('/Subtype /Type0', '/Subtype /TrueType'),
  '7.21.7-1': cmap((text) => text.replace(/beginbfchar[\s\S]*?endbfchar/g, '')),
  '7.21.7-2': cmap((text) => text.replace(/(<0001> )<[0-9a-f]+>/, '$1<0000>')),
  '7.21.8-1': (pdf) => pdf.content((text) => text.replace(/<[0-9a-f]{4}/, '<0000')),
};
