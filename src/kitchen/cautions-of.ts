import type { Assessment } from '../engine/judge/assessment';
import { type Caution, cautionsFor } from '../model/cautions';
import type { Option, Project } from '../model/project';
import { mirroredWindows } from './mirrored-windows';

/** What to heed before ordering an option; for page and command line alike. Without an assessment less can be said. */
export const cautionsOf = (project: Project, option: Option, assessment: Assessment | null): readonly Caution[] =>
  cautionsFor(project, option, assessment, mirroredWindows(project.kitchen));
