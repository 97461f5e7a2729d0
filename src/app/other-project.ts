import type { History } from '../model/history';
import type { Project } from '../model/project';
import { type AppState, withHistory } from './state';

/**
 * What changes when another project comes in with its own history: what was chosen, picked, held or said in the one before goes, for ids
 * recur from project to project. How one likes to look (own eye heights, unit, modes) stays.
 */
export function withProject(state: AppState, history: History<Project>): Partial<AppState> {
  const project = history.present;
  return {
    ...withHistory(state, history),
    option: project.options.at(-1)!.id,
    holding: false,
    setting: project.settings[0]!.id,
    heldLight: null,
    lastLight: null,
    // The camera goes to a place of this room, also where that is the very place it was moved from in the other.
    viewpointVersion: state.viewpointVersion + 1,
    movedEye: null,
    eyes: { ...state.eyes, places_mm: {} },
    drawer: null,
    wishes: {},
    reading: null,
    picked: null,
    held: null,
    aim: null,
    pointed: [],
    assessments: {},
    told: null,
  };
}
