import { failure, type Result, success } from '../engine/result';

export type JsonValue =
  | null
  | boolean
  | number
  | string
  | readonly JsonValue[]
  | { readonly [name: string]: JsonValue };

/** A JSON text read, with the line each value starts on, by path: '' is the whole, then options[1].scheme.floor. */
export interface LocatedJson {
  readonly value: JsonValue;
  readonly lines: ReadonlyMap<string, number>;
}

/** No document of ours nests deeper; a limit keeps a hostile file from exhausting the stack. */
const MOST_DEPTH = 64;

/**
 * Reads JSON (RFC 8259) and remembers the lines. The platform's own parser says where an error is in words that differ
 * between engines and forgets the places of values. Refuses a name that stands twice in one object.
 */
export function locateJson(text: string, file?: string): Result<LocatedJson> {
  const reader = new Reader(text.startsWith('\uFEFF') ? text.slice(1) : text);
  try {
    return success({ value: reader.readDocument(), lines: reader.lines });
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    return failure({
      code: 'not-json',
      text: `Line ${fault.line}: ${fault.message}.`,
      at: { ...(file ? { file } : {}), line: fault.line, ...(fault.path ? { path: fault.path } : {}) },
      remedy: 'Correct the file at this line; it has to be JSON.',
    });
  }
}

/** The path of a member or an item below `parent`, as problems print it. */
export const childPath = (parent: string, key: string | number): string =>
  typeof key === 'number' ? `${parent}[${key}]` : parent === '' ? key : `${parent}.${key}`;

/** Unwinds the reader; never leaves this file. */
class Fault extends Error {
  constructor(
    message: string,
    readonly line: number,
    readonly path: string,
  ) {
    super(message);
  }
}

const SPACE = /[ \t\r\n]*/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids raw control characters in strings.
const STRING = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const WORD = /true|false|null/y;

class Reader {
  readonly lines = new Map<string, number>();
  private at = 0;
  private line = 1;
  private counted = 0;

  constructor(private readonly text: string) {}

  readDocument(): JsonValue {
    this.skipSpace();
    if (this.at >= this.text.length) this.fail('the file is empty', '');
    const value = this.readValue('', 0);
    this.skipSpace();
    if (this.at < this.text.length) this.fail(`${this.found()} after the end of the document`, '');
    return value;
  }

  private readValue(path: string, depth: number): JsonValue {
    if (depth > MOST_DEPTH) this.fail(`more than ${MOST_DEPTH} levels of nesting`, path);
    this.lines.set(path, this.lineHere());
    switch (this.text[this.at]) {
      case '{':
        return this.readObject(path, depth);
      case '[':
        return this.readArray(path, depth);
      case '"':
        return this.readString(path);
    }
    const word = this.take(WORD);
    if (word) return word === 'null' ? null : word === 'true';
    const number = this.take(NUMBER);
    if (number === '') this.fail(`${this.found()} where a value should be`, path);
    const value = Number(number);
    if (!Number.isFinite(value)) this.fail(`the number ${number} is too large`, path);
    return value;
  }

  private readObject(path: string, depth: number): JsonValue {
    const members: [string, JsonValue][] = [];
    const names = new Set<string>();
    this.at++;
    this.skipSpace();
    if (this.skip('}')) return {};
    do {
      this.skipSpace();
      if (this.text[this.at] !== '"') this.fail(`${this.found()} where a name in double quotes should be`, path);
      const name = this.readString(path);
      if (names.has(name)) this.fail(`"${name}" stands twice in one object`, path);
      names.add(name);
      this.skipSpace();
      if (!this.skip(':')) this.fail(`${this.found()} where the colon after "${name}" should be`, path);
      this.skipSpace();
      members.push([name, this.readValue(childPath(path, name), depth + 1)]);
      this.skipSpace();
    } while (this.skip(','));
    if (!this.skip('}')) this.fail(`${this.found()} where a comma or } should be`, path);
    // fromEntries defines own members, so a name like __proto__ stays plain data.
    return Object.fromEntries(members);
  }

  private readArray(path: string, depth: number): JsonValue {
    const items: JsonValue[] = [];
    this.at++;
    this.skipSpace();
    if (this.skip(']')) return items;
    do {
      this.skipSpace();
      items.push(this.readValue(childPath(path, items.length), depth + 1));
      this.skipSpace();
    } while (this.skip(','));
    if (!this.skip(']')) this.fail(`${this.found()} where a comma or ] should be`, path);
    return items;
  }

  private readString(path: string): string {
    const quoted = this.take(STRING);
    if (quoted === '') this.fail('a text that is not closed or has a forbidden character', path);
    return JSON.parse(quoted) as string;
  }

  private skipSpace(): void {
    this.take(SPACE);
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
    for (; this.counted < this.at; this.counted++) if (this.text[this.counted] === '\n') this.line++;
    return this.line;
  }

  private found(): string {
    const character = this.text[this.at];
    return character === undefined ? 'the file ends' : `"${character}" stands`;
  }

  private fail(message: string, path: string): never {
    throw new Fault(message, this.lineHere(), path);
  }
}
