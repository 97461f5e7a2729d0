import type { StoreApi } from 'zustand/vanilla';
import type { DecisionState, SurfaceId } from '../engine/surface';
import type { Command } from '../model/commands';
import { isEmpty } from '../model/empty-surface';
import type { LogEntry } from '../model/log';
import type { Option, Project } from '../model/project';
import { type AppState, documentOf } from './state';
import { LOG_WORDS } from './words';

export interface LogActions {
  /** Adds a note of one's own to the log. */
  readonly note: (text: string) => void;
  /** Keeps a copy of the project as it is, and says so in the log. */
  readonly freeze: (name: string, note: string) => void;
  /** Brings a revision back, and says so in the log. */
  readonly goBack: (revision: string) => void;
  /** Takes a revision out, and says so in the log. */
  readonly removeRevision: (revision: string) => void;
}

export function createLogActions(store: StoreApi<AppState>, run: (command: Command) => void): LogActions {
  const nameOf = (revision: string): string =>
    documentOf(store.getState()).revisions?.find(({ id }) => id === revision)?.name ?? '';
  const logged = (label: string, command: Command, text: string) =>
    run({ kind: 'together', label, commands: [command, entered({ kind: 'revision', text })] });
  return {
    note: (text) => run(entered({ kind: 'note', text })),
    freeze: (name, note) => {
      const id = nextRevision(documentOf(store.getState()));
      const command: Command = { kind: 'freeze-revision', id, name, at: now(), note };
      logged(LOG_WORDS.freezeLabel(id, name), command, LOG_WORDS.frozen(id, name));
    },
    goBack: (revision) => {
      const command: Command = { kind: 'go-back-to-revision', revision };
      logged(LOG_WORDS.goBackLabel(revision), command, LOG_WORDS.wentBack(revision, nameOf(revision)));
    },
    removeRevision: (revision) => {
      const name = nameOf(revision);
      const command: Command = { kind: 'remove-revision', revision };
      logged(LOG_WORDS.removeLabel(revision, name), command, LOG_WORDS.removed(revision, name));
    },
  };
}

/**
 * What the log says where surfaces of an option come to be decided, ordered or fixed, or open again: one line for those that lie alike. No
 * line for those that are as they were, and none for what stands empty.
 */
export function decisionEntries(
  { library }: Pick<Project, 'library'>,
  { id, scheme }: Option,
  surfaces: readonly SurfaceId[],
  state: DecisionState,
): readonly Command[] {
  const moved = surfaces.filter((surface) => scheme[surface].state !== state && !isEmpty(scheme[surface]));
  const finishes = new Set(moved.map((surface) => scheme[surface].finish));
  return [...finishes].map((finish) => {
    const alike = moved.filter((surface) => scheme[surface].finish === finish);
    const label = library.find((one) => one.id === finish)?.label ?? finish;
    const text = LOG_WORDS.decided(alike, state, label);
    return entered({ kind: 'decision', text, option: id, surface: alike[0]! });
  });
}

const entered = (entry: Omit<LogEntry, 'at'>): Command => ({ kind: 'add-log', entry: { at: now(), ...entry } });

const now = (): string => new Date().toISOString();

/** The number after the highest there is or was: what the log says of a removed one stays true. */
function nextRevision({ revisions = [], log = [] }: Project): string {
  const told = log.map(({ kind, text }) => (kind === 'revision' ? Number(/\bR(\d{1,5})\b/.exec(text)?.[1] ?? 0) : 0));
  return `R${Math.max(0, ...revisions.map(({ id }) => Number(id.slice(1))), ...told) + 1}`;
}
