import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

/*
 * All that people read in the page stands in files of words (`src/ui/words`, `src/app/words.ts`), so that it can be turned to other words
 * and units at one place. Sentences of findings, cautions, problems and labels of steps are made by functions of engine, model, kitchen and
 * io: page and command line print the same object, and the log of a project keeps the labels, so they stay there, in US words, and the page
 * turns them where it shows them.
 */

const isWords = (file: string): boolean => file.startsWith('src/ui/words/') || file === 'src/app/words.ts';
const files = ['src/ui', 'src/app', 'src/view']
  .flatMap((folder) => (readdirSync(folder, { recursive: true }) as string[]).map((name) => join(folder, name)))
  .filter((name) => /\.tsx?$/.test(name) && !/\.(test|data)\.ts$/.test(name) && !isWords(name));

/** Attributes whose text is read or read out. */
const READ = new Set([
  'alt',
  'aria-description',
  'aria-label',
  'aria-placeholder',
  'aria-roledescription',
  'aria-valuetext',
  'hint',
  'label',
  'placeholder',
  'title',
]);
const LETTER = /\p{L}/u;
/** Two words, or one with a capital: a sentence, a label, a name. Keys of the keyboard and style rules are told apart by where they stand. */
const SAID = /^[^<>{}#.[(]*\p{L}{2,} \p{L}/u;

interface Loose {
  readonly where: string;
  readonly text: string;
}

function looseIn(source: ts.SourceFile): readonly Loose[] {
  const file = source.fileName;
  const found: Loose[] = [];
  const add = (node: ts.Node, text: string) => {
    const { line } = source.getLineAndCharacterOfPosition(node.getStart());
    found.push({ where: `${file}:${line + 1}`, text: text.trim() });
  };
  const visit = (node: ts.Node) => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    if (ts.isJsxText(node) && LETTER.test(node.text)) add(node, node.text);
    const text = textOf(node);
    if (text !== null && LETTER.test(text)) {
      const attribute = attributeOf(node);
      if (attribute === null ? SAID.test(text) && !isUnread(node) : READ.has(attribute) && !isTest(node.parent)) {
        add(node, text);
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

function textOf(node: ts.Node): string | null {
  if (ts.isStringLiteralLike(node)) return node.text;
  return ts.isTemplateExpression(node)
    ? [node.head, ...node.templateSpans.map((span) => span.literal)].map(({ text }) => text).join('0')
    : null;
}

/** The attribute a text is the value of; null where it stands elsewhere. */
function attributeOf(node: ts.Node): string | null {
  for (let at = node.parent; at && !ts.isStatement(at); at = at.parent) {
    if (ts.isJsxAttribute(at)) return at.name.getText();
    if (ts.isJsxElement(at) || ts.isCallExpression(at)) return null;
  }
  return null;
}

/** Something is compared with the text. */
const isTest = (parent: ts.Node): boolean =>
  (ts.isBinaryExpression(parent) && /^[=!]==$/.test(parent.operatorToken.getText())) ||
  (ts.isCallExpression(parent) && /\.(?:startsWith|includes)$/.test(parent.expression.getText()));

/** Texts nobody reads: of exceptions, which are bugs, keys of records, and paths of drawings and style rules. */
function isUnread(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isNewExpression(parent)) return /Error$/.test(parent.expression.getText());
  if (ts.isTaggedTemplateExpression(parent) || isTest(parent)) return true;
  return (ts.isPropertyAssignment(parent) && parent.name === node) || STYLES.test(textOf(node) ?? '');
}
const STYLES = /^(?:linear-gradient|rgb|translate|rotate|\w[\w-]* is-\w|input, select|textarea, select|Creation Time)/;

/** A callback of map and the like. */
const isCalledHere = ({ parent }: ts.Node): boolean =>
  ts.isCallExpression(parent) && /\.(?:map|flatMap|filter|from|reduce|fromEntries)$/.test(parent.expression.getText());

/** Where a message is read while the module loads: it would not follow a later choice. */
function readsAtLoading(source: ts.SourceFile): readonly Loose[] {
  const file = source.fileName;
  const words = new Set<string>();
  for (const statement of source.statements) {
    const { importClause, moduleSpecifier } = statement as ts.ImportDeclaration;
    if (!ts.isImportDeclaration(statement) || importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword) continue;
    const from = (moduleSpecifier as ts.StringLiteral).text;
    const bindings = importClause?.namedBindings;
    const isOfWords = /(?:^|\/)words(?:\/|$)/.test(from) && !/\/(?:numbers|spoken)$/.test(from);
    if (isOfWords && bindings && ts.isNamedImports(bindings))
      for (const one of bindings.elements) words.add(one.name.text);
  }
  const found: Loose[] = [];
  const visit = (node: ts.Node) => {
    if (ts.isImportDeclaration(node) || ts.isTypeNode(node)) return;
    // What a function does later is no matter, unless it is called here.
    if (ts.isFunctionLike(node) && !isCalledHere(node)) return;
    if (ts.isCallExpression(node) && /^(?:reread|lazy|Object\.keys)$/.test(node.expression.getText())) return;
    if (ts.isIdentifier(node) && words.has(node.text)) {
      const { line } = source.getLineAndCharacterOfPosition(node.getStart());
      found.push({ where: `${file}:${line + 1}`, text: node.parent.getText() });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const parsed = (file: string, code: string): ts.SourceFile =>
  ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true);
const sources = files.map((file) => parsed(file, readFileSync(file, 'utf8')));

describe('text in components', () => {
  it('is found where it stands', () => {
    const texts = (tsx: string) => looseIn(parsed('a.tsx', tsx)).map(({ text }) => text);
    expect(texts('<p>Save it</p>')).toEqual(['Save it']);
    expect(
      // biome-ignore lint/suspicious/noTemplateCurlyInString: this is the text of a component.
      texts('<p aria-label="Save" className="wide box" title={`Save ${file}`}>{"Save the file"}</p>'),
    ).toHaveLength(3);
    expect(texts("const told = { text: 'The file is broken.' };")).toEqual(['The file is broken.']);
    expect(texts("alert('No file here')")).toEqual(['No file here']);
    expect(
      texts("if (event.key === 'Escape') throw new Error('a bug somewhere'); <p className='one two'>{BAR.save}</p>"),
    ).toEqual([]);
  });

  it('stands in files of words, all of it', () => {
    expect(files.length).toBeGreaterThan(250);
    expect(sources.flatMap(looseIn)).toEqual([]);
  });
});

describe('messages', () => {
  it('read at loading are found', () => {
    const head = "import { BAR } from '../words/top-bar';\n";
    const reads = (body: string) => readsAtLoading(parsed('a.tsx', head + body)).length;
    expect(reads('const NAMES = [BAR.save];')).toBe(1);
    expect(reads('const NAMES = IDS.map((id) => BAR[id]);')).toBe(1);
    expect(reads('const NAMES = reread(() => [BAR.save]); const name = () => BAR.save; type Bar = typeof BAR;')).toBe(
      0,
    );
  });

  it('are read while drawing, or by `reread`', () => {
    expect(sources.flatMap(readsAtLoading)).toEqual([]);
  });
});
