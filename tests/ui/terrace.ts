import { readFileSync } from 'node:fs';
import { parseProject } from '../../src/io/project-file';
import type { Project } from '../../src/model/project';

/** The demo project as the page opens it. */
export function terrace(): Project {
  const text = readFileSync(new URL('../../demo-data/terrace.project.json', import.meta.url), 'utf8');
  const project = parseProject(text);
  if (!project.ok) throw new Error(project.problem.text);
  return project.value;
}
