/** A word of a CGATS text and its line; `quoted` words are never keywords. */
export interface CgatsWord {
  readonly line: number;
  readonly text: string;
  readonly quoted: boolean;
  /** Its quote is never closed: the rest of the line went into it. */
  readonly open?: true;
}

/** The words of a text in the form of CGATS.17 / ISO 28178: white space between them, strings in double quotes, # for remarks. */
export const cgatsWords = (text: string): readonly CgatsWord[] =>
  text.split(/\r\n|\n|\r/).flatMap((raw, i) => wordsOfLine(raw, i + 1));

/** The words of one line. A quote within a word is part of it (3"x6"); a doubled one within a string stands for itself. */
export function wordsOfLine(raw: string, line: number): CgatsWord[] {
  const words: CgatsWord[] = [];
  let at = 0;
  for (;;) {
    while (at < raw.length && isSpace(raw.charCodeAt(at))) at++;
    if (at >= raw.length || raw[at] === '#') return words;
    const from = at;
    if (raw[at] === '"') {
      at = endOfString(raw, at + 1);
      const inside = raw.slice(from + 1, at < 0 ? undefined : at).replaceAll('""', '"');
      words.push({ line, text: inside.trim(), quoted: true, ...(at < 0 && { open: true }) });
      if (at < 0) return words;
      at++;
    } else {
      while (at < raw.length && !isSpace(raw.charCodeAt(at))) at++;
      words.push({ line, text: raw.slice(from, at), quoted: false });
    }
  }
}

/** Where the quote stands that closes a string; -1 if nowhere. */
function endOfString(raw: string, from: number): number {
  let at = raw.indexOf('"', from);
  while (at >= 0 && raw[at + 1] === '"') at = raw.indexOf('"', at + 2);
  return at;
}

const isSpace = (code: number): boolean => code <= 32 || code === 0xa0 || code === 0xfeff;
