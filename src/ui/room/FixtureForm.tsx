import { useState } from 'react';
import type { Problem } from '../../engine/result';
import type { Fixture, FixtureKind, PlanPoint } from '../../model/fixture';
import { type BeamRecord, LAMP_GROUPS } from '../../model/project';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { FIELD } from '../words/daylight';
import { FIXTURES } from '../words/fixtures';
import { PICTURE } from '../words/picture';
import { reread } from '../words/spoken';
import { BeamForm, type BeamTaken } from './BeamForm';
import { problemAtField } from './field-problem';
import { LENGTH, LUMENS_PER_M, type Measure, PLAIN } from './measures';
import { NumberField } from './NumberField';
import { isPlaced, movedLamp, ofKind, spreadEvenly, withCount } from './new-fixture';

interface FixtureFormProps {
  readonly fixture: Fixture;
  readonly beams: readonly BeamRecord[];
  /** Where its lamps are now, mm. */
  readonly places: readonly PlanPoint[];
  readonly onFixture: (fixture: Fixture) => readonly Problem[];
  readonly onOpenBeam: (file: File) => Promise<BeamTaken>;
  readonly onRemove: () => void;
}

const KINDS = reread(() =>
  (Object.keys(FIXTURES.kinds) as FixtureKind[]).map((kind) => [kind, FIXTURES.kinds[kind]] as const),
);
const GROUPS = reread(() => LAMP_GROUPS.map((group) => [group, PICTURE.groups[group]] as const));
const PLACES = reread(
  () =>
    [
      { id: 'evenly', name: FIXTURES.evenly },
      { id: 'places', name: FIXTURES.atPlaces },
    ] as const,
);

/** Lamps of one kind: what they are, how much light, how it spreads, where they hang, what they are switched with. */
export function FixtureForm(props: FixtureFormProps) {
  const { fixture, places } = props;
  const [refused, setRefused] = useState<string | null>(null);
  const set = (next: Fixture, label: string): void => {
    const [problem] = props.onFixture(next);
    setRefused(problem ? problemAtField(problem, label) : null);
  };
  return (
    <div className="room-form">
      <div className="room-fields">
        <Menu
          label={FIXTURES.kind}
          value={fixture.kind}
          choices={KINDS}
          onChoose={(kind) => set(ofKind(fixture, kind), FIXTURES.kind)}
        />
        <Menu
          label={FIXTURES.group}
          value={fixture.group}
          choices={GROUPS}
          onChoose={(group) => set({ ...fixture, group }, FIXTURES.group)}
        />
      </div>
      {refused && (
        <p className="small field-wrong" role="alert">
          {refused}
        </p>
      )}
      <Measures fixture={fixture} onFixture={props.onFixture} />
      <BeamForm fixture={fixture} beams={props.beams} onFixture={props.onFixture} onOpenBeam={props.onOpenBeam} />
      {isPlaced(fixture) && (
        <>
          <div className="field">
            <span className="label">{FIXTURES.places}</span>
            <Choices
              label={FIXTURES.places}
              choices={PLACES}
              chosen={fixture.at ? 'places' : 'evenly'}
              onChoose={(id) =>
                set(id === 'places' ? { ...fixture, at: rounded(places) } : spreadEvenly(fixture), FIXTURES.places)
              }
            />
          </div>
          {fixture.at && (
            <>
              <p className="small quiet">{FIXTURES.placesHint}</p>
              <div className="room-fields">
                {fixture.at.map(([x, y], i) => [
                  <NumberField
                    // biome-ignore lint/suspicious/noArrayIndexKey: a lamp is its place in the list
                    key={`x${i}`}
                    label={FIXTURES.x(i + 1)}
                    measure={LENGTH}
                    value={x}
                    onValue={(value) => props.onFixture(movedLamp(fixture, i, [value, y]))}
                  />,
                  <NumberField
                    // biome-ignore lint/suspicious/noArrayIndexKey: a lamp is its place in the list
                    key={`y${i}`}
                    label={FIXTURES.y(i + 1)}
                    measure={LENGTH}
                    value={y}
                    onValue={(value) => props.onFixture(movedLamp(fixture, i, [x, value]))}
                  />,
                ])}
              </div>
            </>
          )}
        </>
      )}
      <div className="room-row">
        <button type="button" className="button button-outlined" onClick={props.onRemove}>
          {FIXTURES.remove}
        </button>
      </div>
    </div>
  );
}

const rounded = (places: readonly PlanPoint[]): readonly PlanPoint[] =>
  places.map(([x, y]) => [Math.round(x), Math.round(y)]);

/** The numbers of each kind of lamp. */
function Measures({ fixture, onFixture }: Pick<FixtureFormProps, 'fixture' | 'onFixture'>) {
  const number = (label: string, of: string | Measure, value: number, next: (value: number) => Fixture) => (
    <NumberField
      key={label}
      label={label}
      {...(typeof of === 'string' ? { unit: of } : { measure: of })}
      value={value}
      onValue={(typed) => onFixture(next(typed))}
    />
  );
  return (
    <div className="room-fields">
      {'count' in fixture && number(FIXTURES.count, PLAIN, fixture.count, (count) => withCount(fixture, count))}
      {'lumens_each' in fixture &&
        number(FIXTURES.lumensEach, FIELD.lm, fixture.lumens_each, (lumens_each) => ({ ...fixture, lumens_each }))}
      {'lumens_per_m' in fixture &&
        number(FIXTURES.lumensPerM, LUMENS_PER_M, fixture.lumens_per_m, (lumens_per_m) => ({
          ...fixture,
          lumens_per_m,
        }))}
      {'diameter' in fixture &&
        number(FIXTURES.diameter, LENGTH, fixture.diameter, (diameter) => ({ ...fixture, diameter }))}
      {'width' in fixture && number(FIXTURES.width, LENGTH, fixture.width, (width) => ({ ...fixture, width }))}
      {fixture.kind === 'panel' &&
        number(FIXTURES.length, LENGTH, fixture.length, (length) => ({ ...fixture, length }))}
      {fixture.kind === 'pendant' &&
        number(FIXTURES.height, LENGTH, fixture.height, (height) => ({ ...fixture, height }))}
      {fixture.kind === 'strip' && (
        <Menu
          label={FIXTURES.stripRun}
          value={fixture.run}
          choices={[
            ['above-wall-units', FIXTURES.stripRuns['above-wall-units']],
            ['toe-kick', FIXTURES.stripRuns['toe-kick']],
          ]}
          onChoose={(run) => onFixture({ ...fixture, run })}
        />
      )}
      {fixture.kind === 'under-cabinet' && (
        <Menu
          label={FIXTURES.stripRun}
          value={fixture.run}
          choices={(['front', 'middle', 'back'] as const).map((run) => [run, FIXTURES.cabinetRuns[run]])}
          onChoose={(run) => onFixture({ ...fixture, run })}
        />
      )}
    </div>
  );
}
