import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A run of text as pdfjs finds it, in points from the top left. */
export interface FoundRun {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly width: number;
}

export interface FoundPage {
  readonly width: number;
  readonly height: number;
  readonly runs: readonly FoundRun[];
  /** types of the structure tree, in order */
  readonly types: readonly string[];
}

/** A PDF as a reader that is not ours finds it. */
export interface Found {
  readonly pages: readonly FoundPage[];
  readonly bookmarks: readonly string[];
  readonly title: string;
  readonly language: string;
}

/** Reads a file with pdfjs. Runs of white space alone are left out. */
export async function readIndependently(bytes: Uint8Array): Promise<Found> {
  const task = getDocument({
    data: Uint8Array.from(bytes),
    useSystemFonts: false,
    verbosity: 0,
  });
  const pdf = await task.promise;
  const pages: FoundPage[] = [];
  for (let number = 1; number <= pdf.numPages; number++) pages.push(await readPage(await pdf.getPage(number)));
  const outline = (await pdf.getOutline()) ?? [];
  const { info } = (await pdf.getMetadata()) as {
    info: { Title?: string; Language?: string };
  };
  await task.destroy();
  return {
    pages,
    bookmarks: outline.map(({ title }) => title),
    title: info.Title ?? '',
    language: info.Language ?? '',
  };
}

type Page = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>;

async function readPage(page: Page): Promise<FoundPage> {
  const { width, height } = page.getViewport({ scale: 1 });
  const { items } = await page.getTextContent({
    disableNormalization: true,
    includeMarkedContent: false,
  });
  const runs = items.flatMap((item): FoundRun[] => {
    if (!('str' in item) || !item.str.trim()) return [];
    const [, , c, d, x, y] = item.transform as number[];
    return [
      {
        text: item.str,
        x: x!,
        y: height - y!,
        size: Math.hypot(c!, d!),
        width: item.width,
      },
    ];
  });
  return {
    width,
    height,
    runs,
    types: typesOf((await page.getStructTree()) as Node | null),
  };
}

interface Node {
  readonly role?: string;
  readonly children?: readonly Node[];
}

function typesOf(node: Node | null): string[] {
  if (!node) return [];
  return [...(node.role && node.role !== 'Root' ? [node.role] : []), ...(node.children ?? []).flatMap(typesOf)];
}
