import { extractTextItems, getDocumentProxy } from 'unpdf';

/** A piece of text where it stands on its page, pt from the lower left corner. */
interface PdfText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface PdfPage {
  readonly width_pt: number;
  readonly height_pt: number;
  readonly texts: readonly PdfText[];
  /** All of it without spaces, in the order it was set: lines break where the paper asks for it. */
  readonly letters: string;
}

/** The pages of a PDF file, with their text as an independent reader finds it. */
export async function readPdf(file: Buffer): Promise<readonly PdfPage[]> {
  const pdf = await getDocumentProxy(new Uint8Array(file));
  const { items } = await extractTextItems(pdf);
  return Promise.all(
    items.map(async (texts, i) => {
      const [left, bottom, right, top] = (await pdf.getPage(i + 1)).view as [number, number, number, number];
      const found = texts.filter(({ str }) => str.trim() !== '');
      return {
        width_pt: right - left,
        height_pt: top - bottom,
        texts: found.map(({ str, x, y, width }) => ({ text: str, x, y, width })),
        letters: lettersOf(found.map(({ str }) => str).join('')),
      };
    }),
  );
}

export const lettersOf = (text: string): string => text.replace(/\s+/g, '');

/** How many fonts a file describes, and how many of them it holds (ISO 32000-1, 9.9). */
export function fontsIn(file: Buffer): { readonly described: number; readonly embedded: number } {
  const text = file.toString('latin1');
  const count = (pattern: RegExp) => text.match(pattern)?.length ?? 0;
  return { described: count(/\/Type \/FontDescriptor\b/g), embedded: count(/\/FontFile[23]? \d+ 0 R/g) };
}
