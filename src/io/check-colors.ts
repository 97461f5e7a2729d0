import { wholeCurve } from '../engine/finish/component';
import { type Problem, type Result, success } from '../engine/result';
import { usesOf } from '../model/change-finishes';
import { givenComponents } from '../model/given-components';
import type { CopiedLook } from '../model/look';
import type { Finish, Project, ProjectDocument, Revision } from '../model/project';
import { withoutFinishes } from '../model/without-finishes';
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

/** What came of looking at every color of a project. */
export interface ColorCheck {
  /** Every color that cannot be used, with file, line and path. */
  readonly problems: readonly Problem[];
  /** The project without what has such a color. */
  readonly usable: Project;
  /** What was left out of it, what lay there, and why. */
  readonly leftOut: readonly Problem[];
  /** Colors that can be used but are doubtful. */
  readonly notices: readonly Problem[];
}

/**
 * Looks for colors that no surface can have (outside the object-color solid) or that say too little, in a project read
 * from `text`, frozen copies and looks as well. Each color is turned into a spectrum: call it when a file was opened, not
 * at every change. Yields after each color, so that a page can draw in between.
 */
export function* checkingColors(project: Project, text: string, file?: string): Generator<undefined, ColorCheck> {
  const problems: Problem[] = [];
  const notices: Problem[] = [];
  const leftOut: Problem[] = [];
  /** By content: frozen copies hold mostly the same colors, which are looked at and told once. */
  const seen = new Map<string, boolean>();
  function* isUsable(content: unknown, look: () => Generator<undefined, boolean>): Generator<undefined, boolean> {
    const key = JSON.stringify(content);
    const usable = seen.get(key) ?? (yield* look());
    seen.set(key, usable);
    return usable;
  }
  function* checkFinish(finish: Finish, document: ProjectDocument, at: string): Generator<undefined, boolean> {
    const before = problems.length;
    for (const [k, given] of givenComponents(finish).entries()) {
      const path = `${at}.components[${k}].color`;
      const placed = (problem: Problem): Problem => {
        const said = `${path} (${finish.id}, ${given.role}): ${problem.text}`;
        return { ...problem, text: said, at: { path } };
      };
      const made = wholeCurve(given);
      if (!made.ok) problems.push(placed(made.problem));
      else notices.push(...(made.notices ?? []).filter(({ code }) => TOLD_AGAIN.includes(code)).map(placed));
      yield;
    }
    if (problems.length === before) return true;
    leftOut.push(finishLeftOut(problems[before]!, finish, document));
    return false;
  }
  function* usableIn<D extends ProjectDocument>(document: D, where: string): Generator<undefined, D> {
    const wrong = new Set<string>();
    for (const [i, finish] of document.library.entries()) {
      const check = () => checkFinish(finish, document, `${where}library[${i}]`);
      if (!(yield* isUsable(finish, check))) wrong.add(finish.id);
    }
    if (!document.looks) return withoutFinishes(document, wrong);
    const looks: CopiedLook[] = [];
    for (const [i, look] of document.looks.entries()) {
      const check = function* (): Generator<undefined, boolean> {
        const found = lookColorProblems(look, `${where}looks[${i}].`);
        problems.push(...found);
        if (found[0]) leftOut.push(lookLeftOut(found[0], look.name));
        yield;
        return found.length === 0;
      };
      if (yield* isUsable(look, check)) looks.push(look);
    }
    return { ...withoutFinishes(document, wrong), looks };
  }
  const now = yield* usableIn(project, '');
  const revisions: Revision[] = [];
  for (const [i, revision] of (project.revisions ?? []).entries()) {
    revisions.push({ ...revision, document: yield* usableIn(revision.document, `revisions[${i}].document.`) });
  }
  if (problems.length + notices.length === 0) return { problems, usable: project, leftOut, notices };
  const located = locateJson(text, file);
  const lines = located.ok ? located.value.lines : 1;
  const found = (list: readonly Problem[]) => list.map((problem) => placeProblem(problem, lines, file));
  const usable = project.revisions ? { ...now, revisions } : now;
  return { problems: found(problems), usable, leftOut: found(leftOut), notices: found(notices) };
}

const finishLeftOut = (why: Problem, { id, label }: Finish, document: ProjectDocument): Problem => {
  const uses = usesOf(document, id).map(({ at }) => at);
  const lay = uses.length > 0 ? `, and nothing is chosen any more where it lay: ${uses.join(', ')}` : '';
  return { ...why, text: `${why.text} ${label} (${id}) was left out${lay}.`, remedy: AS_IT_WAS };
};

const lookLeftOut = (why: Problem, name: string): Problem => ({
  ...why,
  text: `${why.text} The look "${name}" was left out.`,
  remedy: AS_IT_WAS,
});

const AS_IT_WAS = 'What you opened is as it was: correct the numbers there and open it again, or put it in anew.';

/** The same in one go; refuses a project with a color that cannot be used. */
export function checkColors(project: Project, text: string, file?: string): Result<Project> {
  const steps = checkingColors(project, text, file);
  for (;;) {
    const step = steps.next();
    if (!step.done) continue;
    const { problems, notices } = step.value;
    return problems.length > 0 ? failureOf(problems) : success(project, notices);
  }
}
