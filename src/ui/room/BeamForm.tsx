import { useState } from 'react';
import type { Problem } from '../../engine/result';
import type { Fixture } from '../../model/fixture';
import type { BeamRecord } from '../../model/project';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { OpenFileButton } from '../parts/OpenFileButton';
import { FIELD } from '../words/daylight';
import { FIXTURES } from '../words/fixtures';
import { problemWords } from '../words/problems';
import { reread, retold } from '../words/spoken';
import { NumberField } from './NumberField';

/** What came of opening the file of a lamp. */
export interface BeamTaken {
  /** What was read, in words; null where nothing was. */
  readonly told: string | null;
  readonly problems: readonly Problem[];
}

interface BeamFormProps {
  readonly fixture: Fixture;
  readonly beams: readonly BeamRecord[];
  readonly onFixture: (fixture: Fixture) => readonly Problem[];
  readonly onOpenBeam: (file: File) => Promise<BeamTaken>;
}

const KINDS = reread(() => (['wide', 'spread', 'file'] as const).map((id) => ({ id, name: FIXTURES.beams[id] })));
const USUAL_ANGLE_DEG = 60;

/** How lamps spread their light: wide, in a beam of an angle, or as a photometric file says. */
export function BeamForm({ fixture, beams, onFixture, onOpenBeam }: BeamFormProps) {
  const [asked, setAsked] = useState(false);
  const [taken, setTaken] = useState<BeamTaken | null>(null);
  const { beam } = fixture;
  const kind = asked ? 'file' : beam.kind;
  const choose = (next: (typeof KINDS)[number]['id']) => {
    setAsked(false);
    setTaken(null);
    if (next === 'wide') onFixture({ ...fixture, beam: { kind: 'wide' } });
    else if (next === 'spread') onFixture({ ...fixture, beam: { kind: 'spread', angle_deg: USUAL_ANGLE_DEG } });
    else if (beams[0]) onFixture({ ...fixture, beam: { kind: 'file', beam: beams[0].id, turn_deg: 0 } });
    else setAsked(true);
  };
  const open = async (file: File) => {
    const result = await onOpenBeam(file);
    setTaken(result);
    if (result.told !== null) setAsked(false);
  };
  return (
    <div className="room-form">
      <div className="field">
        <span className="label">{FIXTURES.beam}</span>
        <Choices label={FIXTURES.beam} choices={KINDS} chosen={kind} onChoose={choose} />
      </div>
      {beam.kind === 'spread' && !asked && (
        <NumberField
          label={FIXTURES.angle}
          unit={FIELD.deg}
          value={beam.angle_deg}
          onValue={(angle_deg) => onFixture({ ...fixture, beam: { kind: 'spread', angle_deg } })}
        />
      )}
      {beam.kind === 'file' && (
        <div className="room-fields">
          <Menu
            label={FIXTURES.beamFile}
            value={beam.beam}
            choices={beams.map(({ id, label }) => [id, label])}
            onChoose={(id) => onFixture({ ...fixture, beam: { ...beam, beam: id } })}
          />
          <NumberField
            label={FIXTURES.turn}
            unit={FIELD.deg}
            value={beam.turn_deg}
            onValue={(turn_deg) => onFixture({ ...fixture, beam: { ...beam, turn_deg } })}
          />
        </div>
      )}
      {kind === 'file' && (
        <>
          {asked && <p className="small">{FIXTURES.noBeam}</p>}
          <div className="room-row">
            <OpenFileButton title={FIXTURES.openIesTitle} accept=".ies,.txt" onFile={(file) => void open(file)}>
              {FIXTURES.openIes}
            </OpenFileButton>
          </div>
        </>
      )}
      {taken && <Taken taken={taken} />}
    </div>
  );
}

/** What was read or refused, with the line of the file and what to do. */
function Taken({ taken: { told, problems } }: { readonly taken: BeamTaken }) {
  return (
    <div className="room-told small" role={told === null ? 'alert' : 'status'}>
      {told !== null && <p>{told}</p>}
      {problems.map((problem) => (
        <p key={`${problem.code}-${problem.at?.line}-${problem.text}`}>
          {told !== null ? (
            <strong>{FIXTURES.note}. </strong>
          ) : (
            problem.at?.line !== undefined && <strong>{FIXTURES.line(problem.at.line)}. </strong>
          )}
          {problemWords(problem)} {retold(problem.remedy)}
        </p>
      ))}
      {told === null && <p>{FIXTURES.beamKept}</p>}
    </div>
  );
}
