/**
 * The line a value of a JSON text starts on, and those of what is below it. A tree and no table by path: a path repeats every name above
 * it, so that a long name over a long list would fill the memory.
 */
export type JsonLines = number | JsonBranch;

export interface JsonBranch {
  readonly line: number;
  /** By name of an object, by place of a list. */
  readonly below: ReadonlyMap<string, JsonLines> | readonly JsonLines[];
}

/** The path of a member or an item below `parent`, as problems print it: options[1].scheme.floor, '' for the whole. */
export const childPath = (parent: string, key: string | number): string =>
  typeof key === 'number' ? `${parent}[${key}]` : parent === '' ? key : `${parent}.${key}`;

/** The line of a path; of what is missing, that of what it is missing from. */
export function lineOf(lines: JsonLines, path: string): number {
  let here = lines;
  for (let at = 0; typeof here !== 'number' && at < path.length; ) {
    const next: Step | null = 'get' in here.below ? memberAt(here.below, path, at) : itemAt(here.below, path, at);
    if (!next) break;
    here = next.lines;
    at = next.end;
  }
  return typeof here === 'number' ? here : here.line;
}

interface Step {
  readonly lines: JsonLines;
  /** Where in the path the next step begins. */
  readonly end: number;
}

/** A name may have dots and brackets of its own: the shortest that there is counts. */
function memberAt(members: ReadonlyMap<string, JsonLines>, path: string, at: number): Step | null {
  const start = path[at] === '.' ? at + 1 : at;
  for (let end = start; end <= path.length; end++) {
    if (end < path.length && path[end] !== '.' && path[end] !== '[') continue;
    const lines = members.get(path.slice(start, end));
    if (lines !== undefined) return { lines, end };
    if (end - start > MOST_NAME) break;
  }
  return null;
}

function itemAt(items: readonly JsonLines[], path: string, at: number): Step | null {
  const end = path.indexOf(']', at) + 1;
  const lines = path[at] === '[' && end > 0 ? items[Number(path.slice(at + 1, end - 1))] : undefined;
  return lines === undefined ? null : { lines, end };
}

/** No name in a document of ours is longer, in UTF-16 units; longer ones are refused. */
export const MOST_NAME = 200;
