import { finishComponent } from '../engine/finish/component';
import type { Problem } from '../engine/result';
import type { Project } from '../model/project';

/**
 * Problems of colors that no surface can have (outside the object-color solid) or that say too little. Each color is
 * turned into a spectrum, which takes time: call it when a project was opened, not at every change.
 */
export function checkColors(project: Project): readonly Problem[] {
  return project.library.flatMap((finish, i) =>
    finish.components.flatMap(({ role, share, color }, k): readonly Problem[] => {
      const path = `library[${i}].components[${k}].color`;
      const made = finishComponent({ role, share, color, finishClass: finish.class, provenance: finish.provenance });
      if (made.ok) return [];
      const { text } = made.problem;
      return [{ ...made.problem, text: `${path} (${finish.id}, ${role}): ${text}`, at: { ...made.problem.at, path } }];
    }),
  );
}
