import { SaxesParser, type SaxesTagNS } from 'saxes';
import { failure, type Problem, type Result, success } from '../engine/result';
import { placeIn } from './place-problem';

/** An element of an XML text. */
export interface XmlElement {
  /** Local name, whatever the prefix. */
  readonly name: string;
  /** Namespace URI; '' where it has none. */
  readonly uri: string;
  /** Line of its start tag's name, from 1. */
  readonly line: number;
  /** By local name. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  /** Its own text, without that of its children, trimmed. */
  readonly text: string;
}

interface Open extends XmlElement {
  readonly tag: string;
  readonly children: XmlElement[];
  text: string;
}

const MOST_DEPTH = 32;
const MOST_ATTRIBUTES = 64;
const MOST_ELEMENTS = 100_000;

/** Read in pieces, so that a text that is refused is not read to its end. */
const PIECE = 4096;

const NO_ATTRIBUTES: ReadonlyMap<string, string> = new Map();

/**
 * Reads a well-formed XML text with namespaces into elements: only what data files need. A document type is refused, and so
 * is any entity but the five of XML and character numbers, and a text that is nested deeper or longer than data are: no file
 * can grow in memory or reach outside itself. `mostElements` is for files longer than those of lamps.
 */
export function readXml(text: string, file?: string, mostElements = MOST_ELEMENTS): Result<XmlElement> {
  // What the parser says after a first problem is of no use: it goes on as well as it can.
  const first: { problem?: Problem } = {};
  const root: { element?: XmlElement } = {};
  const parser = new SaxesParser({ xmlns: true });
  const path: Open[] = [];
  let last: Open | undefined;
  let count = 0;
  let attributes = 0;
  let line = 1;

  const refuse = (problem: Problem) => {
    first.problem ??= problem;
  };
  const bad = (at: number, what: string) => refuse(malformed(at, what, file));
  // The mark after a name is read already; where it ends the line, the name stands on the line before.
  const lineOfName = () => (parser.column === 0 && parser.line > 1 ? parser.line - 1 : parser.line);

  parser.on('doctype', (content) => refuse(refusedType(parser.line - (content.match(/\n/g)?.length ?? 0), file)));
  parser.on('opentagstart', ({ name }) => {
    line = lineOfName();
    attributes = 0;
    if (++count > mostElements) bad(line, `the file has more than ${mostElements.toLocaleString('en-US')} elements`);
    if (path.length >= MOST_DEPTH) bad(line, `${localName(name)} lies too deep`);
  });
  parser.on('attribute', () => {
    if (++attributes > MOST_ATTRIBUTES) bad(lineOfName(), 'an element has too many attributes');
  });
  parser.on('opentag', (tag) => {
    path.push({
      name: tag.local,
      uri: tag.uri,
      line,
      attributes: attributesOf(tag),
      children: [],
      text: '',
      tag: tag.name,
    });
  });
  const addText = (piece: string) => {
    const top = path.at(-1);
    if (top) top.text += piece;
  };
  parser.on('text', addText);
  parser.on('cdata', addText);
  parser.on('closetag', () => {
    last = path.pop();
    if (!last) return;
    last.text = last.text.trim();
    const parent = path.at(-1);
    if (parent) parent.children.push(last);
    else root.element = last;
  });
  parser.on('error', ({ message }) => {
    if (first.problem) return;
    const said = message.replace(/^\d+:\d+: /, '').replace(/\.$/, '');
    const endTag = text.slice(text.lastIndexOf('</', parser.position - 1), parser.position).replace(/\s/g, '');
    if (/doctype/.test(said)) refuse(refusedType(parser.line, file));
    else if (said.startsWith('unexpected close')) {
      bad(parser.line, `${shortened(endTag)} where </${last?.tag}> of line ${last?.line} should be`);
    } else if (said.startsWith('unmatched closing')) bad(parser.line, `${shortened(endTag)} closes nothing`);
    else if (said.startsWith('unclosed tag')) {
      bad(path.at(-1)?.line ?? line, `${path.at(-1)?.name} is not closed`);
    } else if (/entity/.test(said)) bad(parser.line, 'an unknown entity');
    else bad(parser.line, `this is no well-formed XML (${shortened(said)})`);
  });

  for (let at = 0; at < text.length && !first.problem; at += PIECE) parser.write(text.slice(at, at + PIECE));
  if (!first.problem) parser.close();
  if (first.problem) return failure(first.problem);
  return root.element ? success(root.element) : failure(malformed(1, 'there is no element', file));
}

/** Every element of that name inside another one, at any depth. */
export const elementsNamed = (within: XmlElement, name: string): readonly XmlElement[] =>
  within.children.flatMap((child) => (child.name === name ? [child] : elementsNamed(child, name)));

const localName = (tag: string): string => tag.slice(tag.indexOf(':') + 1);

/** A hostile name should not fill the screen. */
const shortened = (text: string): string => (text.length > 80 ? `${text.slice(0, 80)}...` : text);

function attributesOf({ attributes }: SaxesTagNS): ReadonlyMap<string, string> {
  let found: Map<string, string> | null = null;
  for (const key in attributes) {
    const { prefix, local, value } = attributes[key]!;
    if (prefix === 'xmlns' || key === 'xmlns') continue;
    found ??= new Map();
    // One of the element's own goes before one of another namespace.
    if (prefix === '' || !found.has(local)) found.set(local, value);
  }
  return found ?? NO_ATTRIBUTES;
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
