import { Plus } from 'lucide-react';
import { useId, useState } from 'react';
import type { Problem } from '../../engine/result';
import type { PlanDrawing } from '../../kitchen/plan/plan-drawing';
import type { Fixture, FixtureKind, PlanPoint } from '../../model/fixture';
import type { Kitchen } from '../../model/kitchen';
import type { BeamRecord } from '../../model/project';
import { Menu } from '../drawer/Menu';
import { FIXTURES, fixtureName } from '../words/fixtures';
import { reread } from '../words/spoken';
import type { BeamTaken } from './BeamForm';
import { FixtureForm } from './FixtureForm';
import { problemAtField } from './field-problem';
import { LampHandles } from './LampHandles';
import { freeFixtureId, isPlaced, movedLamp, newFixture } from './new-fixture';
import { PanelFrame } from './PanelFrame';
import { type PlanEye, PlanView } from './PlanView';
import { whereFree } from './where-free';

export interface LampsPanelProps {
  readonly kitchen: Kitchen;
  readonly drawing: PlanDrawing;
  readonly eye: PlanEye | null;
  readonly beams: readonly BeamRecord[];
  readonly onFixtures: (fixtures: readonly Fixture[], continues: boolean) => readonly Problem[];
  /** Reads a photometric file for the lamps of that id. */
  readonly onOpenBeam: (file: File, fixture: string) => Promise<BeamTaken>;
  readonly onClose: () => void;
}

const MARGIN_MM = 160;
const HOLD = 0.045;
const KINDS = reread(() =>
  (Object.keys(FIXTURES.kinds) as FixtureKind[]).map((kind) => [kind, FIXTURES.kinds[kind]] as const),
);

/** The lamps that hang in the room, kind by kind, with where they are on the plan. */
export function LampsPanel(props: LampsPanelProps) {
  const { kitchen, drawing } = props;
  const { fixtures, room } = kitchen;
  const name = useId();
  const [chosen, setChosen] = useState<string | null>(fixtures[0]?.id ?? null);
  const [kind, setKind] = useState<FixtureKind>('downlight');
  const [told, setTold] = useState<string | null>(null);
  const fixture = fixtures.find(({ id }) => id === chosen);
  const places = drawing.lamps.filter((lamp) => lamp.fixture === fixture?.id).map(({ x, y }): PlanPoint => [x, y]);
  const replace = (next: Fixture, continues = false) =>
    props.onFixtures(
      fixtures.map((one) => (one === fixture ? next : one)),
      continues,
    );
  const add = () => {
    const made = whereFree(kitchen, newFixture(kind, freeFixtureId(fixtures, kind)));
    const [problem] = props.onFixtures([...fixtures, made], false);
    setTold(problem ? problemAtField(problem, FIXTURES.kinds[kind]) : null);
    if (!problem) setChosen(made.id);
  };
  return (
    <PanelFrame title={FIXTURES.title} opener="lamps" onClose={props.onClose}>
      <PlanView
        label={FIXTURES.plan}
        drawing={drawing}
        openings={kitchen.openings}
        eye={props.eye}
        margin={MARGIN_MM}
        chosenFixture={chosen}
      >
        {fixture && isPlaced(fixture) && fixture.at && (
          <LampHandles
            places={fixture.at}
            width={room.width}
            depth={room.depth}
            hold={HOLD * Math.max(room.width, room.depth)}
            onMove={(index, place, continues) => replace(movedLamp(fixture, index, place), continues)}
          />
        )}
      </PlanView>
      <section className="room-part">
        <h3>{FIXTURES.list}</h3>
        {fixtures.length === 0 && <p>{FIXTURES.none}</p>}
        <ul className="room-list">
          {fixtures.map((one) => (
            <li key={one.id}>
              <label className="room-item">
                <input type="radio" name={name} checked={one.id === chosen} onChange={() => setChosen(one.id)} />
                {fixtureName(one)}
              </label>
            </li>
          ))}
        </ul>
        <div className="room-row room-add">
          <Menu label={FIXTURES.addKind} value={kind} choices={KINDS} onChoose={setKind} />
          <button type="button" className="button button-outlined" onClick={add}>
            <Plus className="icon" aria-hidden="true" />
            {FIXTURES.add}
          </button>
        </div>
        {told && (
          <p className="small field-wrong" role="alert">
            {told}
          </p>
        )}
      </section>
      {fixture && (
        <section className="room-part">
          <h3>{FIXTURES.kinds[fixture.kind]}</h3>
          <FixtureForm
            key={fixture.id}
            fixture={fixture}
            beams={props.beams}
            places={places}
            onFixture={replace}
            onOpenBeam={(file) => props.onOpenBeam(file, fixture.id)}
            onRemove={() => {
              props.onFixtures(
                fixtures.filter((one) => one !== fixture),
                false,
              );
              setChosen(null);
            }}
          />
        </section>
      )}
    </PanelFrame>
  );
}
