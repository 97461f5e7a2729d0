import { wholeCurve } from '../engine/finish/component';
import { type Problem, type Result, success } from '../engine/result';
import { givenComponents } from '../model/given-components';
import type { Finish, Project, ProjectDocument } from '../model/project';
import { locateJson } from './json-text';
import { lookColorProblems } from './look-file';
import { failureOf, placeProblem } from './place-problem';

/** Notices that a color is not what it seems; how a spectrum was read was told when it came in. */
const TOLD_AGAIN: readonly string[] = [
  'provenance-set',
  'lrv-disagrees',
  'lrv-and-word-disagree',
  'gloss-missing',
  'metal-specular',
];

/**
 * Looks for colors that no surface can have (outside the object-color solid) or that say too little, in a project read
 * from `text`. Each color is turned into a spectrum: call it when a file was opened, not
 * at every change. Yields after each color, so that a page can draw in between; returns the project or every problem
 * with file, line and path. Colors that can be used but are doubtful are said as notices.
 */
export function* checkingColors(project: Project, text: string, file?: string): Generator<undefined, Result<Project>> {
  const problems: Problem[] = [];
  const notices: Problem[] = [];
  const seen = new Set<string>();
  /** Frozen copies hold mostly the same colors, which are looked at once. */
  const isNew = (content: unknown): boolean => {
    const size = seen.size;
    return seen.add(JSON.stringify(content)).size > size;
  };
  for (const [where, { library, looks = [] }] of documentsIn(project)) {
    for (const [i, finish] of library.entries()) {
      if (!isNew(finish)) continue;
      for (const [k, given] of givenComponents(finish).entries()) {
        const path = `${where}library[${i}].components[${k}].color`;
        const placed = (problem: Problem): Problem => {
          const said = `${path} (${finish.id}, ${given.role}): ${problem.text}`;
          return { ...problem, text: said, at: { path } };
        };
        const made = wholeCurve(given);
        if (!made.ok) problems.push(placed(made.problem));
        else notices.push(...(made.notices ?? []).filter(({ code }) => TOLD_AGAIN.includes(code)).map(placed));
        yield;
      }
    }
    for (const [i, look] of looks.entries()) {
      if (!isNew(look)) continue;
      problems.push(...lookColorProblems(look, `${where}looks[${i}].`));
      yield;
    }
  }
  if (problems.length + notices.length === 0) return success(project);
  const located = locateJson(text, file);
  const lines = located.ok ? located.value.lines : new Map<string, number>();
  const found = (list: readonly Problem[]) => list.map((problem) => placeProblem(problem, lines, file));
  return problems.length > 0 ? failureOf(found(problems)) : success(project, found(notices));
}

/** The document and its frozen copies, each with the path it stands at. */
const documentsIn = (project: Project): readonly (readonly [path: string, document: ProjectDocument])[] => [
  ['', project],
  ...(project.revisions ?? []).map(({ document }, i) => [`revisions[${i}].document.`, document] as const),
];

/** The same in one go. */
export function checkColors(project: Project, text: string, file?: string): Result<Project> {
  const steps = checkingColors(project, text, file);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/** The first problem of each color of a list of finishes, null where it has none; one after the other, so that a page can draw in between. */
export function* checkingFinishes(
  finishes: readonly Finish[],
): Generator<{ readonly index: number; readonly problem: Problem | null }> {
  for (const [index, finish] of finishes.entries()) {
    for (const given of givenComponents(finish)) {
      const made = wholeCurve(given);
      yield { index, problem: made.ok ? null : made.problem };
    }
  }
}
