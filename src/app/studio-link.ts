import type { StoreApi } from 'zustand/vanilla';
import type { RoomLight } from '../kitchen/look';
import type { Room } from '../kitchen/types';
import { documentIn } from '../model/change-log';
import { recordOf } from '../model/offered-finishes';
import type { Project } from '../model/project';
import { rememberFacts } from '../ui/drawer/known-facts';
import { problemTold } from '../ui/parts/told';
import type { Studio, StudioEvents } from '../workers/studio';
import { standSeen } from './scene';
import { type AppState, chosenOption, otherOption, projectOf, shownOption, shownSetting } from './state';

/**
 * What the workers say goes into the state. A new room waits for its first light and look, so that the picture of the one
 * before stays until there is another.
 */
export function studioEvents(store: StoreApi<AppState>): StudioEvents {
  let room: Room | null = null;
  let light: RoomLight | null = null;
  return {
    room: (next) => {
      room = next;
      light = null;
      store.setState({ isRoomComing: true });
    },
    light: (next) => {
      if (room) light = next;
      else store.setState({ light: next });
    },
    look: (look, isCurrent) => {
      const unseenWith = ({ unseen }: AppState) => (isCurrent ? unseen.filter((one) => one !== look.option) : unseen);
      if (!room || !light) {
        return store.setState((state) => ({
          looks: { ...state.looks, [look.option]: look },
          unseen: unseenWith(state),
        }));
      }
      const { viewpoints } = room;
      const fresh = { room, light, looks: { [look.option]: look }, picked: null, isRoomComing: false };
      room = null;
      light = null;
      store.setState((state) => ({
        ...fresh,
        unseen: unseenWith(state),
        viewpoint: viewpoints.some((one) => one.id === state.viewpoint) ? state.viewpoint : (viewpoints[0]?.id ?? null),
      }));
    },
    stand: (seen, isCurrent) => store.setState((state) => standSeen(state, seen, isCurrent)),
    standLight: (next) => store.setState(({ stand }) => ({ stand: stand && { ...stand, light: next } })),
    assessment: (assessment, isCurrent) =>
      store.setState((state) => ({
        assessments: { ...state.assessments, [assessment.option]: assessment },
        stale: isCurrent ? state.stale.filter((option) => option !== assessment.option) : state.stale,
      })),
    facts: (library, { finishes, facts }) =>
      rememberFacts(
        finishes.map((id) => recordOf(library, id)),
        facts,
      ),
    // What failed will not come: nobody is to wait for it.
    problem: (problem) =>
      store.setState({ told: problemTold(problem), unseen: [], isRoomComing: false, isStandOld: false }),
  };
}

/** Tells the studio what is wanted, at once and whenever the document or what is on screen changes. */
export function followState(store: StoreApi<AppState>, studio: Studio): () => void {
  const judged = createJudged();
  const show = (state: AppState) => {
    const project = judged(state);
    const first = shownOption(state).id;
    const second = state.holding ? chosenOption(state).id : otherOption(state).id;
    const options = first === second ? [first] : [first, second];
    const stand = state.scene === 'stand' ? state.standChoice : null;
    studio.show(project, { options, setting: shownSetting(state).id, seenBy: state.seenBy, stand });
  };
  show(store.getState());
  return store.subscribe((state, before) => {
    const documentChanged = judged(before) !== judged(state) || state.setting !== before.setting;
    const sceneChanged = state.scene !== before.scene || state.standChoice !== before.standChoice;
    const optionChanged = state.option !== before.option;
    if (!documentChanged && !optionChanged && !sceneChanged && state.seenBy === before.seenBy) return;
    if (documentChanged) {
      const options = projectOf(state).options.map((option) => option.id);
      store.setState({ stale: options, unseen: options, isStandOld: state.scene === 'stand' });
    }
    show(state);
  });
}

/** What light and findings rest on: the same object for as long as nothing but words beside it changed, such as log, notes and revisions. */
function createJudged(): (state: AppState) => Project {
  let last: Project | null = null;
  const known = new WeakMap<Project, Project>();
  return (state) => {
    const project = projectOf(state);
    const before = known.get(project);
    if (before) return before;
    // A worker is handed a copy: frozen revisions would be most of it.
    const next: Project = project.log || project.revisions ? documentIn(project) : project;
    const kept = last && lightsAlike(last, next) ? last : next;
    known.set(project, kept);
    last = kept;
    return kept;
  };
}

/** What neither light nor findings rest on. */
const BESIDE: readonly string[] = ['note', 'job', 'samples', 'quantities'];
const BESIDE_OPTION: readonly string[] = ['note', 'items', 'extras'];

const lightsAlike = (one: Project, other: Project): boolean =>
  alikeBut(BESIDE, one, other, (name, a, b) => name === 'options' && optionsAlike(a as Options, b as Options));

type Options = Project['options'];

const optionsAlike = (one: Options, other: Options): boolean =>
  one.length === other.length &&
  one.every((option, i) => option === other[i] || alikeBut(BESIDE_OPTION, option, other[i]!, () => false));

function alikeBut<T extends object>(
  beside: readonly string[],
  one: T,
  other: T,
  also: (name: string, a: unknown, b: unknown) => boolean,
): boolean {
  return Object.keys({ ...one, ...other })
    .filter((name) => !beside.includes(name))
    .every((name) => {
      const [a, b] = [one[name as keyof T], other[name as keyof T]];
      return a === b || also(name, a, b);
    });
}
