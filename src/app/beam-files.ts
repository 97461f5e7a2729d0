import type { StoreApi } from 'zustand/vanilla';
import type { Problem } from '../engine/result';
import type { Fixture } from '../model/fixture';
import type { BeamRecord } from '../model/project';
import type { BeamTaken } from '../ui/room/BeamForm';
import { FIXTURES } from '../ui/words/fixtures';
import { integer } from '../ui/words/numbers';
import { PROBLEMS } from '../ui/words/problems';
import type { Actions } from './actions';
import { type AppState, projectOf } from './state';

/** A lamp's file has some ten kilobytes. */
const MOST_MEGABYTES = 5;
const BYTES_PER_MEGABYTE = 1e6;

/**
 * Reads how a lamp spreads its light from its photometric file, for the lamps of that id: beam and lamps change in one step.
 * A file that cannot be used leaves everything as it is and says why.
 */
export async function openBeam(
  store: StoreApi<AppState>,
  actions: Actions,
  file: File,
  fixture: string,
): Promise<BeamTaken> {
  const refused = (...problems: readonly Problem[]): BeamTaken => ({ told: null, problems });
  if (file.size > MOST_MEGABYTES * BYTES_PER_MEGABYTE) {
    const text = FIXTURES.tooLarge(Math.round(file.size / BYTES_PER_MEGABYTE));
    return refused({ code: 'file-too-large', text, remedy: FIXTURES.tooLargeRemedy });
  }
  let text: string;
  try {
    text = await file.text();
  } catch {
    return refused({ code: 'unreadable', text: PROBLEMS.unreadable, remedy: PROBLEMS.unreadableRemedy });
  }
  const [{ webFromIes }, { beamOfLamp }] = await Promise.all([import('../io/ies-file'), import('../io/ies-beam')]);
  const read = webFromIes(text, file.name);
  if (!read.ok) return refused(read.problem, ...(read.more ?? []));
  const { beams = [], kitchen } = projectOf(store.getState());
  const made = beamOfLamp(read.value, file.name);
  const known = beams.find((beam) => sameBeam(beam, made));
  const beam: BeamRecord = known ?? { id: freeBeamId(beams), ...made };
  const fixtures = kitchen.fixtures.map((one) => (one.id === fixture ? withBeam(one, beam) : one));
  const problems = actions.addBeam(known ? null : beam, fixtures);
  if (problems.length > 0) return refused(...problems);
  return { told: FIXTURES.beamTaken(beam.label, integer(beam.lumens)), problems: read.notices ?? [] };
}

/** Lamps that spread their light by a beam, each with the lumens its file gives. */
function withBeam(fixture: Fixture, { id, lumens }: BeamRecord): Fixture {
  const beam = { kind: 'file', beam: id, turn_deg: 0 } as const;
  return 'lumens_each' in fixture ? { ...fixture, beam, lumens_each: Math.round(lumens) } : { ...fixture, beam };
}

const sameBeam = ({ id: _, ...one }: BeamRecord, other: Omit<BeamRecord, 'id'>): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

function freeBeamId(beams: readonly BeamRecord[]): string {
  for (let count = beams.length + 1; ; count++) {
    const id = `beam-${count}`;
    if (!beams.some((one) => one.id === id)) return id;
  }
}
