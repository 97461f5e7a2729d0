import type { SettingLight } from '../kitchen/study/setting-light';
import type { Show } from './messages';
import type { RoomAtWork } from './room-desk';

/** One request being served. */
export interface Job {
  readonly show: Show;
  readonly room: RoomAtWork;
  readonly setting: SettingLight;
  readonly stale: () => boolean;
}

/** Work that is done in slices, with other messages between them. */
export type InSlices<T> = Generator<unknown, T>;
