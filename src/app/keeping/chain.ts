import { type Difference, differenceOf } from '../../model/difference';
import type { History } from '../../model/history';
import type { Project } from '../../model/project';
import type { Checkpoint, Journal, KeptStep } from './database';

/** A history as one row: `labels[i]` leads from `documents[i]` to the next. */
export interface Chain {
  readonly documents: readonly Project[];
  readonly labels: readonly string[];
  /** Which document is the present one. */
  readonly position: number;
}

/** A chain as it is in the store: numbers of its first document and of the one kept whole. */
export interface KeptChain extends Chain {
  readonly first: number;
  readonly checkpoint: number;
}

/** What makes the store hold a chain; steps are put after those that go have gone. */
export interface JournalChange {
  readonly kept: KeptChain;
  readonly isNew: boolean;
  /** The store holds just this already. */
  readonly isNothing: boolean;
  readonly journal: Omit<Journal, 'holder' | 'filed'>;
  readonly steps: readonly KeptStep[];
  readonly checkpoint: Checkpoint | null;
}

/** A whole document is kept anew when this many steps lie between it and the present: fewer are gone through in no time. */
const MOST_STEPS_AWAY = 100;

const NOTHING: Difference = { members: [] };

/** The part of a history that belongs to the project that is present: nothing of another one is kept under its id. */
export function chainOf({ past, present, future }: History<Project>): Chain {
  const after = [...future].reverse();
  const documents = [...past.map(({ document }) => document), present, ...after.map(({ document }) => document)];
  const labels = [...past, ...after].map(({ label }) => label);
  const isOther = (document: Project) => document.id !== present.id;
  const start = documents.findLastIndex((document, i) => i < past.length && isOther(document)) + 1;
  const other = documents.findIndex((document, i) => i > past.length && isOther(document));
  const end = other < 0 ? documents.length : other;
  return {
    documents: documents.slice(start, end),
    labels: labels.slice(start, end - 1),
    position: past.length - start,
  };
}

export function historyOf({ documents, labels, position }: Chain): History<Project> {
  return {
    past: labels.slice(0, position).map((label, i) => ({ label, document: documents[i]! })),
    present: documents[position]!,
    future: labels
      .slice(position)
      .map((label, i) => ({ label, document: documents[position + 1 + i]! }))
      .reverse(),
  };
}

/**
 * What leads from what the store holds (null: nothing of this project, or nothing that can be gone on from) to a chain. However much
 * happened in between, only what differs is put. With `whole`, the present document is kept whole in any case.
 */
export function planChange(kept: KeptChain | null, chain: Chain, whole = false): JournalChange {
  const { documents, labels, position } = chain;
  const project = documents[position]!.id;
  const offset = kept ? kept.documents.indexOf(documents[0]!) : -1;
  const isNew = !kept || offset < 0;
  const first = isNew ? 0 : kept.first + offset;
  let same = 1;
  if (!isNew) {
    const isKept = (i: number) =>
      documents[i] === kept.documents[offset + i] && labels[i - 1] === kept.labels[offset + i - 1];
    while (same < documents.length && isKept(same)) same++;
  }
  const steps = documents.slice(same).map((to, i): KeptStep => {
    const from = documents[same + i - 1]!;
    return {
      project,
      seq: first + same + i,
      label: labels[same + i - 1]!,
      forward: differenceOf(from, to) ?? NOTHING,
      back: differenceOf(to, from) ?? NOTHING,
    };
  });
  const present = first + position;
  const last = first + documents.length - 1;
  // What is kept whole may have dropped out of the history, or was undone and something else done.
  const isLost = isNew || kept.checkpoint < first || kept.checkpoint > first + same - 1;
  const isDue = isLost || whole || Math.abs(kept.checkpoint - present) >= MOST_STEPS_AWAY;
  return {
    kept: { ...chain, first, checkpoint: isDue ? present : kept.checkpoint },
    isNew,
    isNothing:
      !isDue &&
      steps.length === 0 &&
      present === kept.first + kept.position &&
      offset === 0 &&
      documents.length === kept.documents.length,
    journal: { project, first, position: present, last },
    steps,
    checkpoint: isDue ? { project, seq: present, document: documents[position]! } : null,
  };
}

/** How many steps lie between the present and what is kept whole. */
export const stepsAway = ({ first, position, checkpoint }: KeptChain): number =>
  Math.abs(first + position - checkpoint);
