import { readFileSync } from 'node:fs';
import { parseProject } from '../../src/io/project-file';
import type { Project } from '../../src/model/project';

export const DEMO_PATH = 'demo-data/terrace.project.json';
export const demoText = (): string => readFileSync(DEMO_PATH, 'utf8');

/** The demo project; throws if it does not parse, which a test of its own checks. */
export function demoProject(): Project {
  const parsed = parseProject(demoText(), DEMO_PATH);
  if (!parsed.ok) throw new Error(parsed.problem.text);
  return parsed.value;
}
