import type { DirectMap } from '../engine/light/direct-map';
import { type RoomStudy, studyRoom } from '../kitchen/study/room-study';
import type { Kitchen } from '../model/project';
import { createDirectDesk, type DirectDesk } from './direct-desk';
import type { Post } from './messages';

/** The picture gets finer direct light this many times on the way to full quality. */
const REFINEMENTS = 4;

/** A room being worked on: its study, and its direct light as far as it is drawn. */
export interface RoomAtWork {
  readonly study: RoomStudy;
  readonly direct: { readonly map: DirectMap | null };
  /** Draws on until full quality; false when something newer came in between. */
  refineDirect(stale: () => boolean): Promise<boolean>;
}

/** Keeps the room of the newest kitchen; a kitchen that did not change is not built again. */
export function createRoomDesk(post: Post, pause: () => Promise<void>) {
  let key = '';
  let room: RoomAtWork | null = null;

  return {
    async prepare(kitchen: Kitchen): Promise<{ room: RoomAtWork; isNew: boolean }> {
      const next = JSON.stringify(kitchen);
      if (room && next === key) return { room, isNew: false };
      const study = await inSlices(kitchen);
      const direct = createDirectDesk(study);
      while (direct.step().stage === 'lattice') await pause();
      post({ kind: 'room', room: study.room });
      post({ kind: 'light', light: direct.roomLight() });
      key = next;
      room = { study, direct, refineDirect: (stale) => refine(direct, stale) };
      return { room, isNew: true };
    },
  };

  async function inSlices(kitchen: Kitchen): Promise<RoomStudy> {
    const steps = studyRoom(kitchen);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      await pause();
    }
  }

  async function refine(direct: DirectDesk, stale: () => boolean): Promise<boolean> {
    let sent = 0;
    while (!direct.done) {
      const { share } = direct.step();
      if (direct.done || share >= (sent + 1) / REFINEMENTS) {
        sent = Math.floor(share * REFINEMENTS);
        post({ kind: 'light', light: direct.roomLight() });
      }
      await pause();
      if (stale()) return false;
    }
    return true;
  }
}
