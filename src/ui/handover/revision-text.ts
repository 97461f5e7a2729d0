import type { Revision } from '../../model/project';
import { HANDOVER } from '../words/handover';

/** "R2, As agreed", or that it is a draft. */
export const revisionText = (revision: Revision | null): string =>
  revision ? [revision.id, revision.name].filter((text) => text.trim() !== '').join(', ') : HANDOVER.draft;
