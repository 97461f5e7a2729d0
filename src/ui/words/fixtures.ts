import type { BeamChoice, Fixture, FixtureKind } from '../../model/fixture';
import { PICTURE } from './picture';
import { spoken } from './spoken';

/** Words of the panel for the lamps of a room. */
export const FIXTURES = spoken({
  title: 'Lamps of the room',
  plan: 'Plan of the kitchen from above with its lamps, back wall at the top',
  list: 'Lamps by kind',
  none: 'The room has no lamps.',
  add: 'Add lamps',
  addKind: 'Kind to add',
  remove: 'Remove these lamps',
  kind: 'Kind',
  kinds: {
    downlight: 'Downlights',
    panel: 'Ceiling panels',
    strip: 'Light strip',
    pendant: 'Pendants',
    'under-cabinet': 'Under-cabinet strip',
    hood: 'Hood lamps',
  } satisfies Record<FixtureKind, string>,
  group: 'Switched with',
  count: 'How many',
  diameter: 'Diameter',
  width: 'Width',
  length: 'Length',
  height: 'Lower edge above the floor',
  lumensEach: 'Light of each',
  lumensPerM: 'Light by length',
  stripRun: 'Where it runs',
  stripRuns: { 'above-wall-units': 'Above the wall units, shining up', 'toe-kick': 'In the toe kick, shining down' },
  cabinetRuns: { front: 'Front edge', middle: 'Middle', back: 'At the wall' },
  places: 'Where they are',
  evenly: 'Evenly',
  atPlaces: 'At places',
  placesHint: 'Drag them on the plan or type the place: from the left wall, from the door wall.',
  x: (number: number) => `Lamp ${number}, from the left wall`,
  y: (number: number) => `Lamp ${number}, from the door wall`,
  beam: 'How the light spreads',
  beams: { wide: 'Wide', spread: 'A beam', file: 'As a file says' } satisfies Record<BeamChoice['kind'], string>,
  angle: 'Beam angle',
  beamFile: 'Beam',
  turn: 'Turned by',
  openIes: 'Open an IES file',
  openIesTitle: 'The photometric file of a lamp, IES LM-63',
  noBeam: 'Open the photometric file of the lamp. It says how its light spreads and how much there is.',
  beamLabel: (label: string) => `beam of ${label}`,
  beamTaken: (label: string, lumens: string) => `Read ${label}: ${lumens} lm.`,
  beamKept: 'The lamps are as they were.',
  tooLarge: (megabytes: number) => `The file has ${megabytes} MB; the file of a lamp has far less.`,
  tooLargeRemedy: 'Choose the photometric file of one lamp, in IES format.',
  note: 'Read, with a note',
  line: (line: number) => `Line ${line}`,
} as const);

/** A fixture as its list names it: what, how many, how much light. */
export const fixtureName = spoken(nameOf);

function nameOf(fixture: Fixture): string {
  const what = FIXTURES.kinds[fixture.kind];
  const light = 'lumens_each' in fixture ? `${fixture.lumens_each} lm` : `${fixture.lumens_per_m} lm/m`;
  const many = 'count' in fixture ? `, ${fixture.count} × ${light}` : `, ${light}`;
  return `${what}${many}, switched with: ${PICTURE.groups[fixture.group].toLowerCase()}`;
}
