import type { JsonValue } from './json-text';

const WIDTH = 120;

/**
 * JSON for people and for line-by-line comparison: what fits on a line stands on one, the rest is broken and indented by
 * two spaces. Members keep their order; undefined members are left out, as in JSON.stringify.
 */
export function layOutJson(value: unknown): string {
  const plain = JSON.parse(JSON.stringify(value)) as JsonValue;
  return `${layOut(plain, '', 0)}\n`;
}

function layOut(value: JsonValue, indent: string, used: number): string {
  const short = onOneLine(value);
  if (indent.length + used + short.length < WIDTH && (indent !== '' || short.length < 2)) return short;
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (value.every((item) => typeof item === 'number')) return fillLines(value, inner, indent);
    return `[\n${value.map((item: JsonValue) => inner + layOut(item, inner, 1)).join(',\n')}\n${indent}]`;
  }
  if (value === null || typeof value !== 'object') return short;
  const members = Object.entries(value).map(([name, member]) => {
    const head = `${JSON.stringify(name)}: `;
    return inner + head + layOut(member, inner, head.length + 1);
  });
  return `{\n${members.join(',\n')}\n${indent}}`;
}

/** Long rows of numbers (spectra) fill their lines. */
function fillLines(values: readonly JsonValue[], inner: string, indent: string): string {
  const lines: string[] = [];
  let line = inner;
  values.forEach((value, i) => {
    const item = `${value}${i + 1 < values.length ? ',' : ''}`;
    if (line.length > inner.length && line.length + item.length + 1 > WIDTH) {
      lines.push(line);
      line = inner;
    }
    line += line.length > inner.length ? ` ${item}` : item;
  });
  return `[\n${[...lines, line].join('\n')}\n${indent}]`;
}

function onOneLine(value: JsonValue): string {
  if (Array.isArray(value)) return `[${value.map(onOneLine).join(', ')}]`;
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  const members = Object.entries(value).map(([name, member]) => `${JSON.stringify(name)}: ${onOneLine(member)}`);
  return members.length ? `{ ${members.join(', ')} }` : '{}';
}
