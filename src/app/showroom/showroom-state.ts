import type { Project } from '../../model/project';

/** How a showroom is set up. */
export interface ShowroomRules {
  readonly name: string;
  /** What customers choose from: the finishes of the project itself besides those that lie there, and these kept libraries. */
  readonly range: { readonly project: boolean; readonly libraries: readonly string[] };
  /** The option each customer begins in, by id. */
  readonly option: string;
  /** Starts afresh when nobody has touched it for this many minutes. */
  readonly minutes: number;
  readonly fillsScreen: boolean;
  /** Customers may type colors in. */
  readonly typesIn: boolean;
}

/** A showroom as it runs: its rules, and the project each customer starts from. */
export interface Showroom extends ShowroomRules {
  readonly start: Project;
}

/** What the page knows of the showroom mode. While it is on, nothing of the document is kept anywhere. */
export interface ShowroomState {
  /** Null: the mode is off. */
  readonly showroom: Showroom | null;
  /** Counts the starts; parts of the screen that remember something begin anew with each. */
  readonly showroomRun: number;
  /** Seconds until it starts afresh; null while nobody is to be warned. */
  readonly startsAfreshIn_s: number | null;
  /** Brings back what the last start over put away; null when that is gone for good. */
  readonly bringBack: (() => void) | null;
  /** The libraries of the range are still being fetched. */
  readonly isRangeComing: boolean;
  /** The list of what lies where is open. */
  readonly listing: boolean;
  /** The form to set it up is open. */
  readonly settingUpShowroom: boolean;
}

export const SHOWROOM_AT_START: ShowroomState = {
  showroom: null,
  showroomRun: 0,
  startsAfreshIn_s: null,
  bringBack: null,
  isRangeComing: false,
  listing: false,
  settingUpShowroom: false,
};
