import { failure, type Result, success } from '../engine/result';
import { childPath, type JsonBranch, type JsonLines, MOST_NAME } from './json-lines';

export type JsonValue =
  | null
  | boolean
  | number
  | string
  | readonly JsonValue[]
  | { readonly [name: string]: JsonValue };

/** A JSON text read, with the line each value starts on. */
interface LocatedJson {
  readonly value: JsonValue;
  readonly lines: JsonLines;
}

/** No document of ours nests deeper; a limit keeps a hostile file from exhausting the stack. */
const MOST_DEPTH = 64;

/** No text of ours is longer without an end. */
const MOST_IN_LINE = 10_000;

/**
 * Reads JSON (RFC 8259) and remembers the lines. The platform's own parser says where an error is in words that differ
 * between engines and forgets the places of values. Refuses a name that stands twice in one object or has more than 200 characters. Time
 * and memory grow with the length of the text alone, whatever it holds.
 */
export function locateJson(text: string, file?: string): Result<LocatedJson> {
  const reader = new Reader(text.startsWith('\uFEFF') ? text.slice(1) : text);
  try {
    return success(reader.readDocument());
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    return failure({
      code: fault.code,
      text: `Line ${fault.line}: ${fault.message}.`,
      at: { ...(file ? { file } : {}), line: fault.line, ...(fault.path ? { path: fault.path } : {}) },
      remedy: 'Correct the file at this line; it has to be JSON.',
    });
  }
}

/** Unwinds the reader; never leaves this file. */
class Fault extends Error {
  constructor(
    message: string,
    readonly line: number,
    readonly path: string,
    readonly code: 'not-json' | 'file-cut-off' | 'file-empty',
  ) {
    super(message);
  }
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const ESCAPE = /["\\/bfnrt]|u[0-9a-fA-F]{4}/y;
const WORD = /true|false|null/y;

/** What is quoted from a file in a message, at most. */
const SHOWN = 40;
const shown = (text: string): string => (text.length > SHOWN ? `${text.slice(0, SHOWN - 3)}...` : text);

class Reader {
  private at = 0;
  private line = 1;
  private counted = 0;
  /** Names and places of what is being read, outermost first. */
  private readonly keys: (string | number)[] = [];

  constructor(private readonly text: string) {}

  readDocument(): LocatedJson {
    this.skipSpace();
    if (this.at >= this.text.length) this.fail('the file is empty');
    const read = this.readValue();
    this.skipSpace();
    if (this.at < this.text.length) this.fail(`${this.found()} after the end of the document`);
    return read;
  }

  private readValue(): LocatedJson {
    if (this.keys.length > MOST_DEPTH) this.fail(`more than ${MOST_DEPTH} levels of nesting`);
    const line = this.lineHere();
    switch (this.text[this.at]) {
      case '{':
        return this.readObject(line);
      case '[':
        return this.readArray(line);
      case '"':
        return { value: this.readString(), lines: line };
    }
    const word = this.take(WORD);
    if (word) return { value: word === 'null' ? null : word === 'true', lines: line };
    const number = this.take(NUMBER);
    if (number === '') this.fail(`${this.found()} where a value should be`);
    const value = Number(number);
    if (!Number.isFinite(value)) this.fail(`the number ${shown(number)} is too large`);
    return { value, lines: line };
  }

  private readObject(line: number): LocatedJson {
    const members: [string, JsonValue][] = [];
    const below = new Map<string, JsonLines>();
    const lines: JsonBranch = { line, below };
    this.at++;
    this.skipSpace();
    if (this.skip('}')) return { value: {}, lines };
    do {
      this.skipSpace();
      if (this.text[this.at] !== '"') this.fail(`${this.found()} where a name in double quotes should be`);
      const name = this.readString();
      if (name.length > MOST_NAME) this.fail(`the name "${shown(name)}" has more than ${MOST_NAME} characters`);
      if (below.has(name)) this.fail(`"${name}" stands twice in one object`);
      this.skipSpace();
      if (!this.skip(':')) this.fail(`${this.found()} where the colon after "${name}" should be`);
      this.skipSpace();
      const read = this.readBelow(name);
      members.push([name, read.value]);
      below.set(name, read.lines);
      this.skipSpace();
    } while (this.skip(','));
    if (!this.skip('}')) this.fail(`${this.found()} where a comma or } should be`);
    // fromEntries defines own members, so a name like __proto__ stays plain data.
    return { value: Object.fromEntries(members), lines };
  }

  private readArray(line: number): LocatedJson {
    const value: JsonValue[] = [];
    const below: JsonLines[] = [];
    const lines: JsonBranch = { line, below };
    this.at++;
    this.skipSpace();
    if (this.skip(']')) return { value, lines };
    do {
      this.skipSpace();
      const read = this.readBelow(value.length);
      value.push(read.value);
      below.push(read.lines);
      this.skipSpace();
    } while (this.skip(','));
    if (!this.skip(']')) this.fail(`${this.found()} where a comma or ] should be`);
    return { value, lines };
  }

  private readBelow(key: string | number): LocatedJson {
    this.keys.push(key);
    const read = this.readValue();
    this.keys.pop();
    return read;
  }

  /** By hand: an expression that repeats a choice runs out of stack in a text of some million characters. */
  private readString(): string {
    const start = this.at++;
    for (let code = this.text.charCodeAt(this.at); code !== QUOTE; code = this.text.charCodeAt(this.at)) {
      // Also at the end of the file, where the code is no number.
      if (!(code >= FIRST_PRINTED)) return this.failString(start);
      this.at++;
      if (code === BACKSLASH && this.take(ESCAPE) === '') return this.failString(start);
    }
    this.at++;
    return JSON.parse(this.text.slice(start, this.at)) as string;
  }

  private failString(start: number): never {
    this.at = start;
    this.fail('a text that is not closed or has a forbidden character');
  }

  private skipSpace(): void {
    while (isSpace(this.text.charCodeAt(this.at))) this.at++;
  }

  private skip(character: string): boolean {
    if (this.text[this.at] !== character) return false;
    this.at++;
    return true;
  }

  private take(token: RegExp): string {
    token.lastIndex = this.at;
    const match = token.exec(this.text)?.[0] ?? '';
    this.at += match.length;
    return match;
  }

  private lineHere(): number {
    for (; this.counted < this.at; this.counted++) if (this.text.charCodeAt(this.counted) === NEWLINE) this.line++;
    return this.line;
  }

  /** The text ends here, also within a word, a number or what stands in quotes. */
  private isAtEnd(): boolean {
    const rest = this.text.slice(this.at, this.at + MOST_IN_LINE);
    return /^(?:"(?:[^"\\\n]|\\.)*\\?|[\w.+-]*\s*)$/.test(rest);
  }

  private found(): string {
    const character = this.text[this.at];
    return character === undefined ? 'the file ends' : `"${character}" stands`;
  }

  private fail(message: string): never {
    const code = this.text.trim() === '' ? 'file-empty' : this.isAtEnd() ? 'file-cut-off' : 'not-json';
    throw new Fault(message, this.lineHere(), this.keys.reduce<string>(childPath, ''), code);
  }
}

const NEWLINE = 0x0a;
const QUOTE = 0x22;
const BACKSLASH = 0x5c;
/** JSON forbids what is below it in texts. */
const FIRST_PRINTED = 0x20;

const isSpace = (code: number): boolean => code === 0x20 || code === NEWLINE || code === 0x0d || code === 0x09;
