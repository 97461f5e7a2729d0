import type { StoreApi } from 'zustand/vanilla';
import type { DecisionState, SurfaceId } from '../engine/surface';
import { applyCommand } from '../model/apply-command';
import { commandLabel } from '../model/command-label';
import type { Command } from '../model/commands';
import { record, redo, undo } from '../model/history';
import { settingsOfSameLamps } from '../model/lamp-settings';
import { layOnSurfaces } from '../model/lay-on-surfaces';
import { type Finish, LAMP_GROUPS, type Lamp, type LampGroup, type Laying, type Setting } from '../model/project';
import { problemTold } from '../ui/parts/told';
import { LAMPS, lampName } from '../ui/words/lamps';
import { type AppState, chosenOption, projectOf, shownSetting, withHistory } from './state';
import { APP_WORDS } from './words';

/** Changes of the document; each is one step to undo unless it continues the one before. */
export interface Actions {
  readonly run: (command: Command, continues?: boolean) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly lay: (surfaces: readonly SurfaceId[], finish: string) => void;
  readonly layOwn: (surfaces: readonly SurfaceId[], finish: Finish) => void;
  readonly setState: (surfaces: readonly SurfaceId[], state: DecisionState) => void;
  readonly setLaying: (surfaces: readonly SurfaceId[], laying: Laying) => void;
  readonly setLevel: (group: LampGroup, level: number, continues: boolean) => void;
  /** The lamps of the setting on screen and of those that have the same. */
  readonly setLamp: (light: string, continues: boolean) => void;
  /** Takes new lamps into the project and lights the one of that id as `setLamp` does. */
  readonly addLamps: (lamps: readonly Lamp[], light: string) => void;
}

export function createActions(store: StoreApi<AppState>): Actions {
  const run = (command: Command, continues = false) => {
    const state = store.getState();
    const project = projectOf(state);
    const result = applyCommand(project, command);
    if (!result.ok) return store.setState({ told: problemTold(result.problem, result.more) });
    const label = commandLabel(project, command);
    store.setState(withHistory(state, record(state.history, result.value, label, continues)));
  };
  const together = (label: string, commands: readonly Command[]) => {
    const [only] = commands;
    run(commands.length === 1 && only ? only : { kind: 'together', label, commands });
  };
  const option = () => chosenOption(store.getState());
  const finishLabel = (id: string) =>
    projectOf(store.getState()).library.find((finish) => finish.id === id)?.label ?? id;

  return {
    run,
    undo: () => store.setState((state) => withHistory(state, undo(state.history))),
    redo: () => store.setState((state) => withHistory(state, redo(state.history))),
    lay: (surfaces, finish) =>
      together(APP_WORDS.layLabel(surfaces, finishLabel(finish)), layOnSurfaces(option(), surfaces, finish)),
    layOwn: (surfaces, finish) =>
      together(APP_WORDS.layLabel(surfaces, finish.label), [
        { kind: 'add-finish', finish },
        ...layOnSurfaces(option(), surfaces, finish.id),
      ]),
    setState: (surfaces, state) =>
      together(
        APP_WORDS.stateLabel(surfaces, state),
        surfaces.map((surface) => ({ kind: 'set-state', option: option().id, surface, state })),
      ),
    setLaying: (surfaces, laying) =>
      together(
        APP_WORDS.layingLabel(surfaces),
        surfaces.map((surface) => ({ kind: 'set-laying', option: option().id, surface, laying })),
      ),
    setLevel: (group, level, continues) =>
      run({ kind: 'set-group', setting: shownSetting(store.getState()).id, group, level }, continues),
    setLamp: (light, continues) => {
      const state = store.getState();
      const label = LAMPS.label(lampName(light, projectOf(state).lamps));
      run({ kind: 'together', label, commands: hangLamp(lampSettings(state), light) }, continues);
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
}

const lampSettings = (state: AppState): readonly Setting[] =>
  settingsOfSameLamps(projectOf(state), shownSetting(state));

/** The same lamp in every group that has lamps; the sky stays. */
const hangLamp = (settings: readonly Setting[], light: string): readonly Command[] =>
  settings.flatMap(({ id }) => LAMP_GROUPS.map((group): Command => ({ kind: 'set-group', setting: id, group, light })));
