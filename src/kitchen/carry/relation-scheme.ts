import type { JudgeInput } from '../../engine/judge/input';
import type { RelationScheme } from '../../engine/judge/relations/seen-scheme';
import { optionById } from '../../model/commands';
import type { Project } from '../../model/project';
import { libraryOf } from '../study/scheme';
import { patternsOf } from './pattern-facts';

/** The readings of an option as a scheme to take relations from, or to check them in. */
export const relationScheme = (project: Project, input: JudgeInput): RelationScheme => ({
  input,
  patterns: patternsOf(optionById(project, input.option)!, libraryOf(project)),
});
