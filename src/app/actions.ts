import type { StoreApi } from 'zustand/vanilla';
import type { Problem } from '../engine/result';
import type { DecisionState, SurfaceId } from '../engine/surface';
import { presentSurfaces } from '../kitchen/present-surfaces';
import { applyCommand } from '../model/apply-command';
import { checkDaylight } from '../model/check-daylight';
import { commandLabel } from '../model/command-label';
import { type Command, optionById } from '../model/commands';
import { NO_FINISH } from '../model/empty-surface';
import { familyOf, isLaidAlike } from '../model/families';
import type { Fixture, LampGroup } from '../model/fixture';
import { record, redo, undo } from '../model/history';
import { settingsOfSameLamps } from '../model/lamp-settings';
import { layOnSurfaces } from '../model/lay-on-surfaces';
import {
  type BeamRecord,
  type Daylight,
  type Finish,
  LAMP_GROUPS,
  type Lamp,
  type Laying,
  type Option,
  type Setting,
} from '../model/project';
import { takingIn } from '../model/take-in';
import { refusalTold } from '../ui/parts/told';
import { FIXTURES } from '../ui/words/fixtures';
import { LAMPS, lampName } from '../ui/words/lamps';
import { BAR } from '../ui/words/top-bar';
import { createLogActions, decisionEntries, type LogActions } from './log-actions';
import { offeredIn } from './offered';
import { type AppState, chosenOption, documentOf, projectOf, shownSetting, withHistory } from './state';
import { createTryActions, type TryActions, type TryPlace, withoutTry } from './try-out';
import { APP_WORDS } from './words';

/** Changes of the document; each is one step to undo unless it continues the one before, and drops a change on trial. */
export interface Actions extends TryActions, LogActions {
  readonly run: (command: Command, continues?: boolean) => void;
  /** As `run`, but what is refused is handed back instead of being told over the page; empty when it was done. */
  readonly attempt: (command: Command, continues?: boolean) => readonly Problem[];
  readonly undo: () => void;
  readonly redo: () => void;
  readonly lay: (surfaces: readonly SurfaceId[], finish: string) => void;
  readonly layOwn: (surfaces: readonly SurfaceId[], finish: Finish) => void;
  /** Lays it on trial, as `lay` would; nothing is changed until it is kept. */
  readonly tryFinish: (surfaces: readonly SurfaceId[], finish: string, place: TryPlace) => void;
  /** Takes what lies there off again. */
  readonly empty: (surfaces: readonly SurfaceId[]) => void;
  /** Says so in the log, too. */
  readonly setState: (surfaces: readonly SurfaceId[], state: DecisionState) => void;
  readonly setLaying: (surfaces: readonly SurfaceId[], laying: Laying) => void;
  readonly setLevel: (group: LampGroup, level: number, continues: boolean) => void;
  /** Whether dimming the group turns it warmer. */
  readonly setDims: (group: LampGroup, dims: 'same' | 'warm') => void;
  /** Daylight of the setting on screen: as it was when it was last on, or none. */
  readonly switchDaylight: (on: boolean) => void;
  readonly setDaylight: (daylight: Daylight, continues: boolean) => readonly Problem[];
  /** A copy of the setting on screen, which is then shown. */
  readonly copySetting: (name: string) => readonly Problem[];
  /** A copy of the chosen option, which is then chosen. */
  readonly copyOption: () => void;
  readonly removeOption: () => void;
  /** The lamps of the setting on screen and of those that have the same; of one group alone where one is given. */
  readonly setLamp: (light: string, continues: boolean, group?: LampGroup) => void;
  /** Takes a beam into the project together with the lamps that spread their light by it. */
  readonly addBeam: (beam: BeamRecord | null, fixtures: readonly Fixture[]) => readonly Problem[];
  /** Takes new lamps into the project and lights the one of that id as `setLamp` does. */
  readonly addLamps: (lamps: readonly Lamp[], light: string) => void;
}

export function createActions(store: StoreApi<AppState>): Actions {
  const attempt = (command: Command, continues = false): readonly Problem[] => {
    const state = store.getState();
    const project = documentOf(state);
    const offered = offeredIn(state, project);
    const label = commandLabel({ ...project, library: offered.finishes }, command);
    const result = applyCommand(project, takingIn(project, command, label, offered));
    if (!result.ok) return [result.problem, ...(result.more ?? [])];
    store.setState(withHistory(state, record(state.history, result.value, label, continues)));
    return [];
  };
  const run = (command: Command, continues = false) => {
    const [problem, ...more] = attempt(command, continues);
    if (problem) store.setState({ told: refusalTold(problem, more) });
  };
  const together = (label: string, commands: readonly Command[]) => {
    const [only] = commands;
    run(commands.length === 1 && only ? only : { kind: 'together', label, commands });
  };
  const option = () => chosenOption(store.getState());
  const setting = () => shownSetting(store.getState());
  /** With what is of one family with them and laid alike, but not in this room: an island to come is to match. */
  const withAbsent = (surfaces: readonly SurfaceId[], { scheme }: Option = option()): readonly SurfaceId[] => {
    const { room } = store.getState();
    const absent = surfaces.flatMap((surface) =>
      familyOf(surface).filter(
        (one) => room && !presentSurfaces(room).includes(one) && isLaidAlike(scheme[one], scheme[surface]),
      ),
    );
    return [...new Set([...surfaces, ...absent])];
  };
  const lastDaylight = new Map<string, Daylight>();
  const finishLabel = (id: string) => offeredIn(store.getState()).byId.get(id)?.label ?? id;

  const changes: Omit<Actions, keyof TryActions | 'tryFinish'> = {
    ...createLogActions(store, (command) => run(command)),
    run,
    attempt,
    undo: () => store.setState((state) => withHistory(state, undo(state.history))),
    redo: () => store.setState((state) => withHistory(state, redo(state.history))),
    empty: (surfaces) =>
      together(
        APP_WORDS.emptyLabel(surfaces),
        withAbsent(surfaces).map((surface) => ({
          kind: 'lay-finish',
          option: option().id,
          surface,
          finish: NO_FINISH.id,
        })),
      ),
    lay: (surfaces, finish) =>
      together(
        APP_WORDS.layLabel(surfaces, finishLabel(finish)),
        layOnSurfaces(option(), withAbsent(surfaces), finish),
      ),
    layOwn: (surfaces, finish) =>
      together(APP_WORDS.layLabel(surfaces, finish.label), [
        { kind: 'add-finish', finish },
        ...layOnSurfaces(option(), withAbsent(surfaces), finish.id),
      ]),
    setState: (surfaces, state) =>
      together(APP_WORDS.stateLabel(surfaces, state), [
        ...withAbsent(surfaces).map((surface): Command => ({ kind: 'set-state', option: option().id, surface, state })),
        ...decisionEntries(documentOf(store.getState()), option(), surfaces, state),
      ]),
    setLaying: (surfaces, laying) =>
      together(
        APP_WORDS.layingLabel(surfaces),
        withAbsent(surfaces).map((surface) => ({ kind: 'set-laying', option: option().id, surface, laying })),
      ),
    setLevel: (group, level, continues) => run({ kind: 'set-group', setting: setting().id, group, level }, continues),
    setDims: (group, dims) => run({ kind: 'set-group', setting: setting().id, group, dims }),
    switchDaylight: (on) => {
      const { id, daylight } = setting();
      const project = projectOf(store.getState());
      // Ids recur from project to project, and a light of one is not in another.
      const key = `${project.id}/${id}`;
      if (daylight) lastDaylight.set(key, daylight);
      const last = lastDaylight.get(key);
      const known = last && checkDaylight(last, 'daylight', project).length === 0 ? last : undefined;
      const before = known ?? project.settings.find((one) => one.daylight)?.daylight ?? NOON;
      run({ kind: 'set-daylight', setting: id, daylight: on ? before : null });
    },
    setDaylight: (daylight, continues) => attempt({ kind: 'set-daylight', setting: setting().id, daylight }, continues),
    copySetting: (name) => {
      const id = newId(projectOf(store.getState()).settings, 'setting');
      const problems = attempt({ kind: 'copy-setting', setting: setting().id, id, name });
      if (problems.length === 0) store.setState({ setting: id });
      return problems;
    },
    copyOption: () => {
      const { options } = projectOf(store.getState());
      // The third is called so, if that is free.
      const names = [...BAR.ideas.slice(options.length), ...BAR.ideas];
      const free = names.find((name) => options.every((one) => one.name !== name));
      const name = free ?? `${option().name} ${options.length}`;
      const id = newId(options, 'option');
      const problems = attempt({ kind: 'copy-option', option: option().id, id, name });
      if (problems.length === 0) store.setState({ option: id });
    },
    removeOption: () => run({ kind: 'remove-option', option: option().id }),
    setLamp: (light, continues, group) => {
      const state = store.getState();
      const label = LAMPS.label(lampName(light, projectOf(state).lamps));
      const groups = group ? [group] : LAMP_GROUPS;
      run({ kind: 'together', label, commands: hangLamp(lampSettings(state), light, groups) }, continues);
    },
    addBeam: (beam, fixtures) => {
      const set: Command = { kind: 'set-fixtures', fixtures };
      if (!beam) return attempt(set);
      return attempt({
        kind: 'together',
        label: FIXTURES.beamLabel(beam.label),
        commands: [{ kind: 'add-beam', beam }, set],
      });
    },
    addLamps: (lamps, light) => {
      const state = store.getState();
      const known = projectOf(state).lamps ?? [];
      run({
        kind: 'together',
        label: LAMPS.label(lampName(light, [...known, ...lamps])),
        commands: [
          ...lamps.map((lamp): Command => ({ kind: 'add-lamp', lamp })),
          ...hangLamp(lampSettings(state), light),
        ],
      });
    },
  };
  const tries = createTryActions(store);
  return {
    ...droppingTry(store, changes),
    ...tries,
    tryFinish: (surfaces, finish, place) => {
      const state = store.getState();
      // As it is kept: another trial is no part of what this one starts from.
      const kept = optionById(documentOf(state), state.option) ?? chosenOption(state);
      const commands = layOnSurfaces(kept, withAbsent(surfaces, kept), finish);
      tries.tryChange(commands, APP_WORDS.layLabel(surfaces, finishLabel(finish)), place);
    },
  };
}

/**
 * Every change starts from the document as it is kept: what is only tried goes first. Undo takes back the trial and nothing else, redo waits
 * for its end.
 */
function droppingTry<T extends object>(store: StoreApi<AppState>, changes: T): T {
  const dropping = Object.entries(changes).map(([name, change]) => [
    name,
    (...given: unknown[]) => {
      if (store.getState().tryOut) {
        // What was undone before is no answer to what is tried.
        if (name === 'redo') return undefined;
        if (name === 'undo') return store.setState(withoutTry);
        store.setState({ tryOut: null });
      }
      return (change as (...given: unknown[]) => unknown)(...given);
    },
  ]);
  return Object.fromEntries(dropping) as T;
}

const lampSettings = (state: AppState): readonly Setting[] =>
  settingsOfSameLamps(projectOf(state), shownSetting(state));

/** The same lamp in every one of the groups; the sky stays. */
const hangLamp = (
  settings: readonly Setting[],
  light: string,
  groups: readonly LampGroup[] = LAMP_GROUPS,
): readonly Command[] =>
  settings.flatMap(({ id }) => groups.map((group): Command => ({ kind: 'set-group', setting: id, group, light })));

/** A day to begin with where no setting has daylight yet. */
const NOON: Daylight = { sky: 'overcast', month: 3, day: 21, hour: 12, blind: 1 };

/** An id that none of them has. */
function newId(of: readonly { readonly id: string }[], kind: 'setting' | 'option'): string {
  for (let count = of.length + 1; ; count++) {
    const id = `${kind}-${count}`;
    if (!of.some((one) => one.id === id)) return id;
  }
}
