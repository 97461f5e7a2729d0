import { expect, it } from 'vitest';
import { elementsNamed, readXml, type XmlElement } from '../../src/io/xml-reader';

/** What was read, or the problem as one line. */
function read(text: string): XmlElement | string {
  const xml = readXml(text);
  return xml.ok ? xml.value : `${xml.problem.code} ${xml.problem.at?.line}: ${xml.problem.text}`;
}

const outline = ({ name, line, text, children }: XmlElement): unknown => [name, line, text, ...children.map(outline)];

it('gives elements with their lines, texts and attributes by local name', () => {
  const root = read(
    '\uFEFF<?xml version="1.0"?>\r\n<a:list xmlns:a="urn:a" xmlns="urn:b">\r\n <item\r\n  a:n="1"\r\n m="2">one &amp; <![CDATA[<two>]]> &#x41;\r\n' +
      '</item>\r\n<a:item/></a:list>\r\n<!-- end -->',
  ) as XmlElement;
  expect(outline(root)).toEqual(['list', 2, '', ['item', 3, 'one & <two> A'], ['item', 7, '']]);
  expect(elementsNamed(root, 'item').map(({ uri }) => uri)).toEqual(['urn:b', 'urn:a']);
  expect([...root.children[0]!.attributes]).toEqual([
    ['n', '1'],
    ['m', '2'],
  ]);
});

it('takes an attribute of the element itself before one of another namespace', () => {
  for (const both of ['x:n="1" n="2"', 'n="2" x:n="1"']) {
    expect((read(`<a xmlns:x="urn:x" ${both}/>`) as XmlElement).attributes.get('n')).toBe('2');
  }
});

it('knows nothing of names that objects have', () => {
  const root = read('<constructor __proto__="1" toString="2"><__proto__/></constructor>') as XmlElement;
  expect(root.name).toBe('constructor');
  expect([...root.attributes]).toEqual([
    ['__proto__', '1'],
    ['toString', '2'],
  ]);
});

const laughs = Array.from({ length: 9 }, (_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`).join('\n');

it.each([
  [
    'a bomb of entities',
    `<?xml version="1.0"?>\n<!DOCTYPE l [\n<!ENTITY l0 "ha">\n${laughs}\n]>\n<l>&l9;</l>`,
    'xml-doctype 2',
  ],
  ['an entity from outside', '<!DOCTYPE a SYSTEM "http://example.test/a.dtd">\n<a/>', 'xml-doctype 1'],
  ['a type within the document', '<a>\n<!DOCTYPE a>\n</a>', 'xml-doctype 2'],
  ['an entity of its own', '<a>\n&lol;\n</a>', 'bad-xml 2: Line 2: an unknown entity.'],
  ['a character of number 0', '<a>\n&#0;</a>', 'bad-xml 2: Line 2: an unknown entity.'],
  ['depth', '<a>\n'.repeat(100_000), 'bad-xml 33: Line 33: a lies too deep.'],
  ['depth under a prefix', `<x:a xmlns:x="u">${'<x:a>'.repeat(100_000)}`, 'bad-xml 1: Line 1: a lies too deep.'],
  ['many elements', `<a>${'<b/>'.repeat(100_001)}</a>`, 'bad-xml 1: Line 1: the file has more than 100,000 elements.'],
  [
    'many attributes',
    `<a\n${Array.from({ length: 100_000 }, (_, i) => `a${i}="1"`).join('\n')}/>`,
    'bad-xml 66: Line 66: an element has too many attributes.',
  ],
  [
    'an attribute twice',
    '<a b="1"\n b="2"/>',
    'bad-xml 2: Line 2: this is no well-formed XML (duplicate attribute: b).',
  ],
  ['a prefix without a namespace', '<a>\n<x:b/></a>', 'bad-xml 2: Line 2: this is no well-formed XML (unbound'],
  ['two outermost elements', '<a/>\n<b/>', 'bad-xml 2: Line 2: this is no well-formed XML (documents may'],
  ['text outside', '<a/>\nb', 'bad-xml 2: Line 2: this is no well-formed XML (text data outside'],
  ['an end without a start', '<a/>\n</b>', 'bad-xml 2: Line 2: </b> closes nothing.'],
  ['crossed elements', '<a>\n<b>\n</a>\n</b>', 'bad-xml 3: Line 3: </a> where </b> of line 2 should be.'],
  ['an open element', '<a>\n<b>\n\n\n', 'bad-xml 2: Line 2: b is not closed.'],
  ['a tag that stops', '<a>\n<b c="', 'bad-xml 1: Line 1: a is not closed.'],
  ['a remark that stops', '<a/>\n<!-- ', 'bad-xml 2: Line 2: this is no well-formed XML (unexpected end).'],
  ['nothing', '', 'bad-xml 1: Line 1: this is no well-formed XML (document must contain a root element).'],
])('refuses %s', (_, text, problem) => {
  expect(read(text)).toContain(problem);
});

it('keeps a long name out of the message', () => {
  expect((read(`<a></${'b'.repeat(10_000)}>`) as string).length).toBeLessThan(200);
});
