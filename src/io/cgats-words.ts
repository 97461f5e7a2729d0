/** A word of a CGATS text and its line; `quoted` words are never keywords. */
export interface CgatsWord {
  readonly line: number;
  readonly text: string;
  readonly quoted: boolean;
  /** Its quote is never closed: the rest of the line went into it. */
  readonly open?: true;
}

/** The words of a text in the form of CGATS.17 / ISO 28178: white space between them, strings in double quotes, # for remarks. */
export function cgatsWords(text: string): readonly CgatsWord[] {
  const words: CgatsWord[] = [];
  let line = 0;
  for (const raw of linesOf(text)) for (const word of wordsOfLine(raw, ++line)) words.push(word);
  return words;
}

/** The lines of a text one by one, however they end: a text of nothing but line ends would fill the memory all at once. */
export function* linesOf(text: string): Generator<string> {
  let feed = text.indexOf('\n');
  let turn = text.indexOf('\r');
  for (let from = 0; ; ) {
    const isTurn = turn >= 0 && (feed < 0 || turn < feed);
    const end = isTurn ? turn : feed;
    yield text.slice(from, end < 0 ? undefined : end);
    if (end < 0) return;
    from = isTurn && feed === turn + 1 ? end + 2 : end + 1;
    if (feed >= 0 && feed < from) feed = text.indexOf('\n', from);
    if (turn >= 0 && turn < from) turn = text.indexOf('\r', from);
  }
}

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
