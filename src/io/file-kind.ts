import type { Problem } from '../engine/result';

interface FileKind {
  /** What its "type" says. */
  readonly type: string;
  /** The newest version that is understood. */
  readonly version: number;
  readonly noun: string;
  /** What to choose instead of a file of another kind. */
  readonly choose: string;
}

/** Refuses a file of another kind, and one that a newer program wrote, before anything else of it is looked at. */
export function wrongKind(value: unknown, { type, version, noun, choose }: FileKind): Problem | null {
  const given = typeof value === 'object' && value !== null ? (value as { type?: unknown; version?: unknown }) : {};
  if (given.type !== type) {
    return {
      code: `not-a-${noun}`,
      text: `This file is no ${noun}: its "type" is not "${type}".`,
      at: { path: '' },
      remedy: `Choose ${choose}, as saved by this program.`,
    };
  }
  if (typeof given.version === 'number' && given.version > version) {
    return {
      code: 'newer-version',
      text: `This ${noun} has version ${given.version}; this program reads up to ${version} and would lose what it does not know.`,
      at: { path: 'version' },
      remedy: 'Open it with the newer program that saved it.',
    };
  }
  return null;
}
