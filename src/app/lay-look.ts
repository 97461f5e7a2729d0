import type { StoreApi } from 'zustand/vanilla';
import { joined, surfacesPhrase } from '../engine/judge/surface-words';
import type { Problem } from '../engine/result';
import type { CarriedLook } from '../kitchen/carry/carry-over';
import type { RelationChange } from '../kitchen/carry/relation-repair';
import { applyCommand } from '../model/apply-command';
import { type Command, optionById } from '../model/commands';
import { layOnSurfaces } from '../model/lay-on-surfaces';
import type { Project } from '../model/project';
import { refusalTold } from '../ui/parts/told';
import { LOOK } from '../ui/words/look';
import type { Actions } from './actions';
import { type AppState, documentOf, projectOf } from './state';

/** More do not fit into the bar on a tablet. */
export const MOST_OPTIONS = 3;

/**
 * Lays a carried look, and the changes that mend it, as a new option, which is then chosen; on the option itself where the
 * project has no room for one more. One step to undo. Gives the id of the option it lies on; what is refused is told on the page, and
 * gives null.
 */
export function layCarried(
  store: StoreApi<AppState>,
  actions: Actions,
  carried: CarriedLook,
  changes: readonly RelationChange[],
): string | null {
  // What is only tried is dropped by what is made.
  const project = documentOf(store.getState());
  const { options } = project;
  const hasRoom = options.length < MOST_OPTIONS;
  const id = hasRoom ? freeId(options) : carried.option;
  const copy: Command = { kind: 'copy-option', option: carried.option, id, name: LOOK.laidName(carried.look.name) };
  const commands = layingOn(project, id, carried, changes, hasRoom ? [copy] : []);
  const label = LOOK.layLabel(carried.look.name);
  const problems = actions.attempt({ kind: 'together', label, commands });
  if (!isDone(store, problems)) return null;
  store.setState({ option: id });
  return id;
}

/** Shows a carried look, with the changes that mend it, on the option as a trial. */
export function tryCarried(
  store: StoreApi<AppState>,
  actions: Actions,
  carried: CarriedLook,
  changes: readonly RelationChange[],
): boolean {
  const commands = layingOn(documentOf(store.getState()), carried.option, carried, changes);
  const what = joined(changes.map(({ label, surfaces }) => LOOK.change(label, surfacesPhrase(surfaces).text)));
  return isDone(store, actions.tryChange(commands, LOOK.tryLabel(what), { option: carried.option }));
}

/** Says on the page why something was refused. */
function isDone(store: StoreApi<AppState>, [problem, ...more]: readonly Problem[]): boolean {
  if (problem) store.setState({ told: refusalTold(problem, more) });
  return !problem;
}

/** Commands that lay the look on an option, then its changes: what follows a surface does so by what lies there by then. */
function layingOn(
  project: Project,
  id: string,
  carried: CarriedLook,
  changes: readonly RelationChange[],
  before: readonly Command[] = [],
): readonly Command[] {
  const commands: Command[] = [
    ...before,
    ...carried.commands.map((one): Command => (one.kind === 'lay-finish' ? { ...one, option: id } : one)),
  ];
  for (const { surfaces, finish } of changes) {
    const so = applyCommand(project, { kind: 'together', label: '', commands });
    const option = so.ok ? optionById(so.value, id) : undefined;
    if (option) commands.push(...layOnSurfaces(option, surfaces, finish));
  }
  return commands;
}

/** Two options beside each other: the chosen one stands beside the next, and of three any two are neighbors one way round. */
export function showBeside(store: StoreApi<AppState>, one: string, other: string): void {
  const ids = projectOf(store.getState()).options.map(({ id }) => id);
  const next = (id: string) => ids[(ids.indexOf(id) + 1) % ids.length];
  store.setState({ option: next(one) === other ? one : other, sideBySide: true });
}

function freeId(options: readonly { readonly id: string }[]): string {
  for (let count = options.length + 1; ; count++) {
    const id = `option-${count}`;
    if (!options.some((one) => one.id === id)) return id;
  }
}
