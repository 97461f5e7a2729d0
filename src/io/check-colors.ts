import { finishComponent } from '../engine/finish/component';
import { type Problem, type Result, success } from '../engine/result';
import type { Project } from '../model/project';
import { locateJson } from './json-text';
import { failureOf, placeProblem } from './place-problem';

/**
 * Looks for colors that no surface can have (outside the object-color solid) or that say too little, in a project read
 * from `text`. Each color is turned into a spectrum, which takes a few milliseconds: call it when a file was opened, not
 * at every change. Yields after each color, so that a page can draw in between; returns the project or every problem
 * with file, line and path.
 */
export function* checkingColors(project: Project, text: string, file?: string): Generator<undefined, Result<Project>> {
  const problems: Problem[] = [];
  for (const [i, finish] of project.library.entries()) {
    for (const [k, { role, share, color }] of finish.components.entries()) {
      const made = finishComponent({ role, share, color, finishClass: finish.class, provenance: finish.provenance });
      if (!made.ok) {
        const path = `library[${i}].components[${k}].color`;
        const said = `${path} (${finish.id}, ${role}): ${made.problem.text}`;
        problems.push({ ...made.problem, text: said, at: { path } });
      }
      yield;
    }
  }
  if (problems.length === 0) return success(project);
  const located = locateJson(text, file);
  const lines = located.ok ? located.value.lines : new Map<string, number>();
  return failureOf(problems.map((problem) => placeProblem(problem, lines, file)));
}

/** The same in one go. */
export function checkColors(project: Project, text: string, file?: string): Result<Project> {
  const steps = checkingColors(project, text, file);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
