import { failure, type Result, success } from '../../engine/result';
import { projectOfJson } from '../../io/project-file';
import { applyDifference } from '../../model/difference';
import { NO_FINISH } from '../../model/empty-surface';
import type { History } from '../../model/history';
import type { Project } from '../../model/project';
import { isSameValue } from '../../model/same-value';
import { damaged, keptNewer } from '../../ui/words/keeping';
import { type Chain, historyOf, type KeptChain } from './chain';
import type { StoredProject } from './journal';

/** A project out of the store. */
export interface Restored {
  readonly history: History<Project>;
  /** As the store holds it; null where it has to be written anew, as a newer program understands it. */
  readonly kept: KeptChain | null;
  /** The document that is in a file, too. */
  readonly saved: Project | null;
}

/** What can be reached from the document that is kept whole, in both directions, whatever it is. */
interface RawChain {
  readonly documents: readonly unknown[];
  readonly labels: readonly string[];
  readonly first: number;
}

/**
 * The history of a project as it is stored. The present document is read as a file is: brought up from older versions, held against the
 * schema, checked. Steps that do not fit end the history there; a present that cannot be reached or read is a problem.
 */
export function restore(stored: StoredProject): Result<Restored> {
  const { journal, checkpoint } = stored;
  const raw = rawChain(stored);
  const position = journal.position - raw.first;
  const present = raw.documents[position];
  if (position < 0 || present === undefined) return failure(damaged(stored.project.name));
  const read = projectOfJson(asInFile(present));
  if (!read.ok) return read;
  // Written back without them, what a newer program kept would be lost.
  const unknown = read.notices?.flatMap(({ code, at }) => (code === 'unknown-field' ? [at?.path ?? ''] : [])) ?? [];
  if (unknown.length > 0) return failure(keptNewer(stored.project.name, unknown));
  if (read.value.id !== journal.project) return failure(damaged(stored.project.name));
  const isAsWritten = isSameValue(present, read.value);
  const chain: Chain = isAsWritten
    ? { documents: raw.documents as readonly Project[], labels: raw.labels, position }
    : broughtUp(raw, position, read.value);
  const at = journal.filed === null ? -1 : journal.filed - raw.first - (position - chain.position);
  return success({
    history: historyOf(chain),
    kept: isAsWritten ? { ...chain, first: raw.first, checkpoint: checkpoint.seq } : null,
    saved: chain.documents[at] ?? null,
  });
}

function rawChain({ journal, checkpoint, steps }: StoredProject): RawChain {
  const bySeq = new Map(steps.map((step) => [step.seq, step]));
  const documents: unknown[] = [checkpoint.document];
  const labels: string[] = [];
  let first = checkpoint.seq;
  for (; first > journal.first; first--) {
    const step = bySeq.get(first);
    const before = step && applyDifference(documents[0], step.back);
    if (!step || before === undefined) break;
    documents.unshift(before);
    labels.unshift(step.label);
  }
  for (let seq = checkpoint.seq + 1; seq <= journal.last; seq++) {
    const step = bySeq.get(seq);
    const after = step && applyDifference(documents.at(-1), step.forward);
    if (!step || after === undefined) break;
    documents.push(after);
    labels.push(step.label);
  }
  return { documents, labels, first };
}

/** Documents of an older version, each read for itself, as far as they can be from the present one on. */
function broughtUp({ documents, labels }: RawChain, position: number, present: Project): Chain {
  const read = (i: number): Project | null => {
    if (i < 0 || i >= documents.length) return null;
    const result = projectOfJson(asInFile(documents[i]));
    return result.ok && result.value.id === present.id ? result.value : null;
  };
  const all = [present];
  let start = position;
  for (let one = read(start - 1); one; one = read(start - 1)) {
    all.unshift(one);
    start--;
  }
  let end = position + 1;
  for (let one = read(end); one; one = read(end)) {
    all.push(one);
    end++;
  }
  return { documents: all, labels: labels.slice(start, end - 1), position: position - start };
}

type Members = Readonly<Record<string, unknown>>;

const isObject = (value: unknown): value is Members =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** A document as a file has it: places where nothing lies are left out there, in frozen copies, too. */
function asInFile(document: unknown): unknown {
  if (!isObject(document)) return document;
  const { options, revisions } = document;
  return {
    ...document,
    ...(Array.isArray(options) && { options: options.map(thinned) }),
    ...(Array.isArray(revisions) && {
      revisions: revisions.map((one: unknown) =>
        isObject(one) ? { ...one, document: asInFile(one['document']) } : one,
      ),
    }),
  };
}

function thinned(option: unknown): unknown {
  if (!isObject(option) || !isObject(option['scheme'])) return option;
  const isEmpty = (place: unknown) => isObject(place) && place['finish'] === NO_FINISH.id;
  return {
    ...option,
    scheme: Object.fromEntries(Object.entries(option['scheme']).filter(([, place]) => !isEmpty(place))),
  };
}

/** The document of a project that cannot be opened, in the shape of a file: the one nearest to the present that can be reached. */
export function rawDocument(stored: StoredProject): unknown {
  const { documents, first } = rawChain(stored);
  const at = Math.min(Math.max(stored.journal.position - first, 0), documents.length - 1);
  return asInFile(documents[at]);
}
