import type { Problem, Result } from '../engine/result';

/** What a command has to say: plain data for --json, the same in words for people, and remarks that are neither. */
export interface Report {
  readonly json: unknown;
  readonly text: string;
  readonly notices?: readonly Problem[];
  /** `text` is a table for programs, which stays as it is whatever words and units are asked for. */
  readonly isTable?: boolean;
  /** Names people gave, which stay as they are in other trade words. */
  readonly names?: readonly string[];
  /** Of a report that is worth printing although nothing came of it; 0 where absent. */
  readonly exit?: 0 | 2;
}

/** A command of the program. `run` gets the arguments after its name; wrong input is a problem, never an exception. */
export interface Command {
  readonly name: string;
  /** Arguments as the help prints them. */
  readonly usage: string;
  readonly summary: string;
  /** Whether its JSON has `notes`, the remarks that are printed beside the words. */
  readonly hasNotes?: boolean;
  run(args: readonly string[]): Result<Report>;
}

/** Options every command understands. */
export const COMMON_OPTIONS = { json: { type: 'boolean', default: false } } as const;
