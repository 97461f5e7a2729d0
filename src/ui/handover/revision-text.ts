import { HANDOVER } from '../words/handover';
import type { HandoverSet } from './handover-set';

/** "R2, As agreed", with a word where something was noted in it afterwards; or that it is a draft. */
export function revisionText({ revision, isNotedSince }: Pick<HandoverSet, 'revision' | 'isNotedSince'>): string {
  if (!revision) return HANDOVER.draft;
  return [revision.id, revision.name, isNotedSince ? HANDOVER.notedSince : '']
    .filter((text) => text.trim() !== '')
    .join(', ');
}
