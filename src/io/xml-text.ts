import { failure, type Problem, type Result, success } from '../engine/result';
import { placeIn } from './place-problem';

/** An element of an XML text. Names are without their prefix. */
export interface XmlElement {
  readonly name: string;
  readonly line: number;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  /** Its own text, without that of its children, trimmed. */
  readonly text: string;
}

interface Open {
  readonly name: string;
  readonly tag: string;
  readonly line: number;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: XmlElement[];
  text: string;
}

const MOST_DEPTH = 32;
const MOST_ELEMENTS = 100_000;

const NAME = '[A-Za-z_][\\w.:-]*';
/** The pieces a text is made of: comment, instruction, CDATA, end tag, start tag, plain text. */
const PIECE = new RegExp(
  `<!--[\\s\\S]*?-->|<\\?[\\s\\S]*?\\?>|<!\\[CDATA\\[([\\s\\S]*?)\\]\\]>|</(${NAME})\\s*>|` +
    `<(${NAME})((?:\\s+${NAME}\\s*=\\s*(?:"[^"<]*"|'[^'<]*'))*)\\s*(/?)>|[^<]+`,
  'y',
);
const ATTRIBUTE = new RegExp(`(${NAME})\\s*=\\s*(?:"([^"]*)"|'([^']*)')`, 'g');
const ENTITIES: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

/**
 * Reads a well-formed XML text into elements: only what data files need. A document type or any entity but the five of XML
 * and character numbers is refused, and so is a text nested deeper or longer than data are, so that no file can grow in
 * memory or reach outside itself.
 */
export function readXml(text: string, file?: string): Result<XmlElement> {
  const source = text.replace(/^\uFEFF/, '');
  const lineAt = lineCounter(source);
  const bad = (at: number, what: string): Result<never> => failure(malformed(lineAt(at), what, file));
  const path: Open[] = [];
  let root: XmlElement | null = null;
  let count = 0;
  PIECE.lastIndex = 0;
  while (PIECE.lastIndex < source.length) {
    const at = PIECE.lastIndex;
    const piece = PIECE.exec(source);
    if (!piece) {
      return /^<!DOCTYPE/i.test(source.slice(at, at + 9))
        ? failure(refusedType(lineAt(at), file))
        : bad(at, 'this is no well-formed XML');
    }
    const [all, cdata, end, start, attributes, empty] = piece;
    const top = path.at(-1);
    if (start !== undefined) {
      if (root && !top) return bad(at, `a second outermost element, ${start}`);
      if (++count > MOST_ELEMENTS) return bad(at, 'the file has too many elements');
      if (path.length >= MOST_DEPTH) return bad(at, `${start} lies too deep`);
      const given = attributesOf(attributes ?? '');
      if (!given) return bad(at, 'an unknown entity');
      path.push({ name: localName(start), tag: start, line: lineAt(at), attributes: given, children: [], text: '' });
    }
    if (end !== undefined && top?.tag !== end) {
      return bad(at, top ? `</${end}> where </${top.tag}> of line ${top.line} should be` : `</${end}> closes nothing`);
    }
    if (end !== undefined || empty === '/') {
      const { tag: _, ...closed } = path.pop()!;
      const element = { ...closed, text: closed.text.trim() };
      const parent = path.at(-1);
      if (parent) parent.children.push(element);
      else root = element;
    }
    if (cdata !== undefined && top) top.text += cdata;
    if (!all.startsWith('<')) {
      const plain = decoded(all);
      if (plain === null) return bad(at, 'an unknown entity');
      if (top) top.text += plain;
      else if (plain.trim() !== '') return bad(at, 'text outside the outermost element');
    }
  }
  const open = path.at(-1);
  if (open) return failure(malformed(open.line, `${open.tag} is not closed`, file));
  return root ? success(root) : bad(0, 'there is no element');
}

/** Every element of that name inside another one, at any depth. */
export const elementsNamed = (within: XmlElement, name: string): readonly XmlElement[] =>
  within.children.flatMap((child) => (child.name === name ? [child] : elementsNamed(child, name)));

const localName = (tag: string): string => tag.slice(tag.indexOf(':') + 1);

function attributesOf(text: string): ReadonlyMap<string, string> | null {
  const attributes = new Map<string, string>();
  for (const [, name, double, single] of text.matchAll(ATTRIBUTE)) {
    const value = decoded(double ?? single ?? '');
    if (value === null) return null;
    attributes.set(localName(name!), value);
  }
  return attributes;
}

/** Text with its entities replaced; null when one of them is not among those of XML itself. */
function decoded(text: string): string | null {
  let known = true;
  const plain = text.replace(/&([^;&\s]*);?/g, (_, entity: string) => {
    const code = /^#(?:x([0-9a-f]{1,6})|(\d{1,7}))$/i.exec(entity);
    const point = code ? Number.parseInt(code[1] ?? code[2]!, code[1] ? 16 : 10) : Number.NaN;
    if (point > 0 && point <= 0x10ffff) return String.fromCodePoint(point);
    const named = Object.hasOwn(ENTITIES, entity) ? ENTITIES[entity]! : null;
    if (named === null) known = false;
    return named ?? '';
  });
  return known ? plain : null;
}

/** Lines by position; positions are asked for in rising order. */
function lineCounter(source: string): (at: number) => number {
  let line = 1;
  let reached = 0;
  return (at) => {
    for (; reached < at; reached++) if (source[reached] === '\n') line++;
    return line;
  };
}

const malformed = (line: number, what: string, file?: string): Problem => ({
  code: 'bad-xml',
  text: `Line ${line}: ${what}.`,
  at: placeIn(file, line),
  remedy: 'Export the file again, or correct it at this line.',
});

const refusedType = (line: number, file?: string): Problem => ({
  code: 'xml-doctype',
  text: `Line ${line}: the file declares a document type, which is not read: it could pull in other files.`,
  at: placeIn(file, line),
  remedy: 'Remove the line with <!DOCTYPE, or export the file again without it.',
});
