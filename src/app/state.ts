import type { Assessment } from '../engine/judge/assessment';
import type { Wish } from '../engine/judge/shortlist/wish';
import type { Unsettling } from '../engine/judge/unsettled';
import type { Vec3 } from '../engine/light/types';
import type { PatternTexture } from '../engine/pattern/types';
import type { Problem } from '../engine/result';
import type { SurfaceId } from '../engine/surface';
import type { Look, RoomLight } from '../kitchen/look';
import type { SeenBy } from '../kitchen/seen-by';
import type { HeldChoice, HeldReading } from '../kitchen/study/held-reading';
import type { PropPlace } from '../kitchen/study/place-light';
import type { Room } from '../kitchen/types';
import { type History, startHistory } from '../model/history';
import { type LengthUnit, unitOfRegion } from '../model/length-text';
import type { Library } from '../model/library';
import type { Option, Project, Setting } from '../model/project';
import type { TradeWords } from '../model/trade-words';
import type { Theme } from '../ui/bar/MoreMenu';
import type { LibraryStep } from '../ui/library/library-props';
import type { Told } from '../ui/parts/told';
import type { CardPaint } from '../view/types';
import type { ViewMode } from '../view/view-mode';
import type { PointReading } from '../workers/studio';
import { type EyeHeights, USUAL_EYES } from './eye-height';
import { type Keeping, NOT_KEPT } from './keeping/types';
import { OFFLINE_AT_START, type OfflineState } from './offline/offline-state';
import { drawnScene, SCENE_AT_START, type SceneState } from './scene';
import { SHOWROOM_AT_START, type ShowroomState } from './showroom/showroom-state';

/** A place on a rectangle of the room, and from where one looks at it. */
interface PickedPlace {
  readonly rect: number;
  /** On a prop instead, where `rect` is -1. */
  readonly onProp?: PropPlace | null;
  readonly u: number;
  readonly v: number;
  readonly eye: Vec3;
}

/** What is shown in place of the findings to set the view, the light and the room. */
export type RoomPanel =
  | 'view'
  | 'light'
  | 'kitchen'
  | 'daylight'
  | 'lamps'
  | 'pairs'
  | 'look'
  | 'decisions'
  | 'projects';

/** A change on trial: seen and judged as if it were made; the document knows nothing of it until it is kept. */
export interface TryOut {
  /** The document with the change. */
  readonly project: Project;
  /** What is tried, as the step to undo is called once it is kept. */
  readonly label: string;
  /** The option it is tried in. */
  readonly option: string;
  /** One goes on trying from where the focus is. */
  readonly keepsFocus: boolean;
  /** The drawer that opens again when it is dropped; null for none. */
  readonly reopens: SurfaceId | null;
  /** The findings of the option without it, in the light it began in; null where they were not known. */
  readonly before: Assessment | null;
}

/** A project that came by a link, with what is to be told of it. */
interface Brought {
  readonly project: Project;
  readonly notices: readonly Problem[];
}

/** Everything the page knows: the document with its history, what is looked at, and what the workers last said. */
export interface AppState extends SceneState, OfflineState, ShowroomState {
  readonly history: History<Project>;
  /** The document as it was last opened from a file or saved as one; null where it never was. */
  readonly saved: Project | null;
  readonly keeping: Keeping;
  /** A change on trial, shown as if it were made; null while there is none. */
  readonly tryOut: TryOut | null;

  /** Ranges of finishes kept in this browser, offered beside the project's own; none before the first picture. */
  readonly keptLibraries: readonly Library[];
  /** Ids of those that are not offered. */
  readonly putAside: readonly string[];
  /** Changes of libraries that can be taken back. */
  readonly librarySteps: readonly LibraryStep[];

  readonly option: string;
  /** The other option is shown for as long as this holds. */
  readonly holding: boolean;
  readonly setting: string;
  /** The setting to go back to while another one is held; null while none is. */
  readonly heldLight: string | null;
  /** The setting that was chosen before. */
  readonly lastLight: string | null;
  readonly viewpoint: string | null;
  readonly viewpointVersion: number;
  readonly eyes: EyeHeights;
  /** Grows when the eye is to be brought to its height without going back to the viewpoint. */
  readonly heightVersion: number;
  /** Where a hand or a key has moved the eye, m; null while it is at the viewpoint. */
  readonly movedEye: Vec3 | null;
  readonly shownAs: ViewMode;
  readonly marksClipped: boolean;
  readonly sideBySide: boolean;
  readonly sheen: boolean;
  /** Whose sight the picture shows. */
  readonly seenBy: SeenBy;
  readonly letterKeys: boolean;
  /** Whose trade words the page speaks; null: as is usual for the browser's language. */
  readonly words: TradeWords | null;
  readonly theme: Theme;

  readonly drawer: SurfaceId | null;
  /** Counts how often a drawer was opened, so that each opening starts afresh. */
  readonly drawerOpened: number;
  /**
   * What one would like of each place, the most wanted first, by the sample the drawer was opened from. For as long as the page is open: a
   * wish is a way to look through a library and decides nothing, so it is no part of the document and no step to undo.
   */
  readonly wishes: Readonly<Partial<Record<SurfaceId, readonly Wish[]>>>;
  readonly reading: SurfaceId | null;
  /** The place on `reading` that was picked in the picture; null when the surface was chosen as a whole. */
  readonly picked: PickedPlace | null;
  readonly point: PointReading | null;
  /** What is held at the picked place; null: a perfect white. */
  readonly held: HeldChoice | null;
  readonly heldCard: { readonly reading: HeldReading; readonly paint: CardPaint } | null;
  /** The reading mark in the picture, moved by keys: where it is, as shares of the picture; null when it is put away. */
  readonly aim: { readonly x: number; readonly y: number } | null;
  readonly panel: RoomPanel | null;
  /** What lengths are shown in; null: as is usual in the kitchen's region. */
  readonly lengthUnit: LengthUnit | null;
  /** The questions of a new project are open. */
  readonly asking: boolean;
  /** The handover set is open. */
  readonly handover: boolean;
  /** The libraries are looked after. */
  readonly libraries: boolean;
  /** The schedule is open. */
  readonly ordering: boolean;
  /** A file of finishes that was dropped on the page, for the libraries to read. */
  readonly dropped: File | null;
  readonly pointed: readonly SurfaceId[];
  readonly keysHelp: boolean;
  readonly told: Told | null;
  /** What a link brought and nobody has accepted yet. */
  readonly brought: Brought | null;
  /** Later decisions that the last changes of finishes work against; null: none. */
  readonly unsettling: Unsettling | null;
  readonly contextLost: boolean;

  readonly room: Room | null;
  /** Another room is on its way; the one shown is that of before. */
  readonly isRoomComing: boolean;
  readonly light: RoomLight | null;
  /** By option id; the latest that came. */
  readonly looks: Readonly<Record<string, Look>>;
  readonly assessments: Readonly<Record<string, Assessment>>;
  /** Options whose assessment is older than the last change. */
  readonly stale: readonly string[];
  /** Options whose look is older than the last change. */
  readonly unseen: readonly string[];
}

/** The state at start: the last option (one's own, after those it was copied from) in the first setting. */
export function initialState(project: Project, theme: Theme): AppState {
  const own = project.options.at(-1) ?? project.options[0]!;
  return {
    history: startHistory(project),
    saved: project,
    keeping: NOT_KEPT,
    tryOut: null,
    keptLibraries: [],
    putAside: [],
    librarySteps: [],
    option: own.id,
    holding: false,
    setting: project.settings[0]!.id,
    heldLight: null,
    lastLight: null,
    viewpoint: null,
    viewpointVersion: 0,
    eyes: USUAL_EYES,
    heightVersion: 0,
    movedEye: null,
    shownAs: 'color',
    marksClipped: false,
    sideBySide: false,
    sheen: true,
    seenBy: 'used-to-it',
    letterKeys: true,
    words: null,
    theme,
    drawer: null,
    drawerOpened: 0,
    wishes: {},
    reading: null,
    picked: null,
    point: null,
    held: null,
    heldCard: null,
    aim: null,
    panel: null,
    lengthUnit: null,
    asking: false,
    handover: false,
    libraries: false,
    ordering: false,
    dropped: null,
    pointed: [],
    keysHelp: false,
    told: null,
    brought: null,
    unsettling: null,
    contextLost: false,
    room: null,
    isRoomComing: false,
    light: null,
    looks: {},
    assessments: {},
    stale: [],
    unseen: [],
    ...SCENE_AT_START,
    ...OFFLINE_AT_START,
    ...SHOWROOM_AT_START,
  };
}

/** What is shown and judged: the document, with the change on trial if there is one. */
export const projectOf = (state: AppState): Project => state.tryOut?.project ?? state.history.present;

/** The document as it is kept, without a change that is only tried. */
export const documentOf = (state: AppState): Project => state.history.present;

/** The document is neither in a file nor kept in the browser as it is now. */
export const isUnsaved = (state: AppState): boolean =>
  documentOf(state) !== state.saved && documentOf(state) !== state.keeping.document;

/**
 * What changes with the document: what is looked at must still be there (else the last option and the first setting, as at
 * start), and what was said of the document before goes, as does a change on trial.
 */
export function withHistory(
  state: AppState,
  history: History<Project>,
): Pick<AppState, 'history' | 'tryOut' | 'option' | 'setting' | 'heldLight' | 'told'> {
  const { options, settings } = history.present;
  const has = (list: readonly { readonly id: string }[], id: string) => list.some((one) => one.id === id);
  return {
    history,
    tryOut: null,
    option: has(options, state.option) ? state.option : options.at(-1)!.id,
    setting: has(settings, state.setting) ? state.setting : settings[0]!.id,
    heldLight: state.heldLight !== null && has(settings, state.heldLight) ? state.heldLight : null,
    told: history.present === state.history.present ? state.told : null,
  };
}

/** The chosen option, whether or not the other one is held at the moment. */
export const chosenOption = (state: AppState): Option => byId(projectOf(state).options, state.option);

/** The option beside the chosen one: the next in the project, or itself when it is alone. */
export function otherOption(state: AppState): Option {
  const { options } = projectOf(state);
  const at = options.findIndex((option) => option.id === state.option);
  return options[(at + 1) % options.length] ?? chosenOption(state);
}

/** The option on screen now. */
export const shownOption = (state: AppState): Option => (state.holding ? otherOption(state) : chosenOption(state));

/** The two options of a split picture, left and right as they stand in the switch. */
export function halvesOf(state: AppState): readonly [left: Option, right: Option] {
  const [chosen, other] = [chosenOption(state), otherOption(state)];
  const { options } = projectOf(state);
  return options.indexOf(chosen) <= options.indexOf(other) ? [chosen, other] : [other, chosen];
}

/** Two options are to be seen at once, and there are two. */
export const isSplitWanted = (state: AppState): boolean => state.sideBySide && projectOf(state).options.length > 1;

/** Where the reading mark is put: in the middle of the picture, or of its left half. */
export const aimAtStart = (isSplit: boolean): { readonly x: number; readonly y: number } => ({
  x: isSplit ? 0.25 : 0.5,
  y: 0.5,
});

/** What is on screen is not yet what is asked for: another option, light or eye is on its way. */
export function isPictureOld(state: AppState): boolean {
  const shown = isSplitWanted(state) ? halvesOf(state) : [shownOption(state)];
  if (state.scene === 'stand') {
    const { id, looks } = drawnScene(state);
    return id === 'room' || state.isStandOld || shown.some((option) => looks[option.id]?.seenBy !== state.seenBy);
  }
  return (
    state.isRoomComing || shown.some(({ id }) => state.looks[id]?.seenBy !== state.seenBy || state.unseen.includes(id))
  );
}

/** What lengths are shown and typed in. */
export const lengthUnitOf = (state: AppState): LengthUnit =>
  state.lengthUnit ?? unitOfRegion(projectOf(state).kitchen.region);

export const shownSetting = (state: AppState): Setting => byId(projectOf(state).settings, state.setting);

/** The one of that id; `withHistory` sees to it that there is one, and the first stands in for it otherwise. */
const byId = <T extends { readonly id: string }>(list: readonly T[], id: string): T =>
  list.find((one) => one.id === id) ?? list[0]!;

/** The patterns baked for the picture, of every option shown. */
export const laidPatterns = ({ looks }: AppState): ReadonlyMap<string, PatternTexture> =>
  new Map(Object.values(looks).flatMap((look) => [...look.patterns]));
