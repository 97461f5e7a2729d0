/** Words of a cell in lower case without accents, one space between them: "Dark-Grey (Grès)" is "dark grey gres". */
export const plainWords = (cell: string): string =>
  cell
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replace(/[^a-z0-9$€£]+/g, ' ')
    .trim();
