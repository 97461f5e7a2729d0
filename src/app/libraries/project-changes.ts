import type { Command, FinishChanges } from '../../model/commands';
import type { Finish } from '../../model/project';

/** The commands that make a project's finishes these ones: changed where ids are the same, taken out, put in. Order is no matter there. */
export function projectChanges(before: readonly Finish[], after: readonly Finish[]): readonly Command[] {
  const known = new Map(before.map((finish) => [finish.id, finish]));
  const stay = new Set(after.map(({ id }) => id));
  const commands: Command[] = [];
  for (const finish of after) {
    const was = known.get(finish.id);
    if (was && was !== finish) {
      commands.push({ kind: 'edit-finish', finish: finish.id, changes: changesOf(was, finish) });
    }
    if (!was) commands.push({ kind: 'add-finish', finish });
  }
  for (const { id } of before) if (!stay.has(id)) commands.push({ kind: 'remove-finish', finish: id });
  return commands;
}

/** What differs; what is no longer there is undefined. */
function changesOf(before: Finish, after: Finish): FinishChanges {
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])] as (keyof Finish)[];
  return Object.fromEntries(keys.filter((key) => before[key] !== after[key]).map((key) => [key, after[key]]));
}
