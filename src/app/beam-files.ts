import type { StoreApi } from 'zustand/vanilla';
import { type Problem, success } from '../engine/result';
import type { Fixture } from '../model/fixture';
import type { BeamRecord } from '../model/project';
import type { BeamTaken } from '../ui/room/BeamForm';
import { FIXTURES } from '../ui/words/fixtures';
import { integer } from '../ui/words/numbers';
import { reread } from '../ui/words/spoken';
import type { Actions } from './actions';
import { type FileLimit, fetched, readFile } from './read-file';
import { type AppState, projectOf } from './state';

/** A lamp's file has some ten kilobytes. */
const BEAM_FILE = reread(
  (): FileLimit => ({ megabytes: 5, tooLarge: FIXTURES.tooLarge, remedy: FIXTURES.tooLargeRemedy }),
);

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
  const read = await readFile(file, BEAM_FILE, async (text) => {
    const code = await fetched(() => Promise.all([import('../io/ies-file'), import('../io/ies-beam')]));
    if (!code.ok) return code;
    const [{ webFromIes }, { beamOfLamp }] = code.value;
    const web = webFromIes(text, file.name);
    return web.ok ? success(beamOfLamp(web.value, file.name), web.notices) : web;
  });
  if (!read.ok) return refused(read.problem, ...(read.more ?? []));
  const { beams = [], kitchen } = projectOf(store.getState());
  const known = beams.find((beam) => sameBeam(beam, read.value));
  const beam: BeamRecord = known ?? { id: freeBeamId(beams), ...read.value };
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
