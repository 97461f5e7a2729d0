import type { Fixture, FixtureKind, LampGroup, PlanPoint } from '../../model/fixture';

/** The switch lamps of a kind are usually on. */
const GROUP: { readonly [K in FixtureKind]: LampGroup } = {
  downlight: 'ceiling',
  panel: 'ceiling',
  strip: 'ceiling',
  pendant: 'pendant',
  'under-cabinet': 'under-cabinet',
  hood: 'hood',
};

/** Lamps of a kind with measures and lumens such lamps often have (common practice, no source). */
export function newFixture(kind: FixtureKind, id: string): Fixture {
  const base = { id, group: GROUP[kind], beam: { kind: 'wide' } } as const;
  switch (kind) {
    case 'downlight':
      return { ...base, kind, beam: { kind: 'spread', angle_deg: 60 }, count: 6, diameter: 90, lumens_each: 700 };
    case 'panel':
      return { ...base, kind, count: 4, width: 300, length: 300, lumens_each: 1500 };
    case 'pendant':
      return { ...base, kind, count: 3, diameter: 250, height: 1600, lumens_each: 600 };
    case 'strip':
      return { ...base, kind, run: 'above-wall-units', width: 20, lumens_per_m: 800 };
    case 'under-cabinet':
      return { ...base, kind, run: 'front', width: 20, lumens_per_m: 500 };
    case 'hood':
      return { ...base, kind, count: 2, diameter: 70, lumens_each: 250 };
  }
}

/** The same lamps as another kind: switch and beam stay. */
export function ofKind(fixture: Fixture, kind: FixtureKind): Fixture {
  const { id, group, beam } = fixture;
  return { ...newFixture(kind, id), group, beam };
}

/** A number no other lamps of the room have. */
export function freeFixtureId(fixtures: readonly Fixture[], kind: FixtureKind): string {
  for (let count = 1; ; count++) {
    const id = count === 1 ? kind : `${kind}-${count}`;
    if (!fixtures.some((one) => one.id === id)) return id;
  }
}

/** Lamps that hang from a place of their own. */
export type PlacedFixture = Extract<Fixture, { readonly kind: 'downlight' | 'panel' | 'pendant' }>;

export const isPlaced = (fixture: Fixture): fixture is PlacedFixture =>
  fixture.kind === 'downlight' || fixture.kind === 'panel' || fixture.kind === 'pendant';

/** As many lamps, each with a place where they have places: new ones beside the last, mm. */
export function withCount(fixture: Fixture, count: number): Fixture {
  if (!('count' in fixture)) return fixture;
  if (!isPlaced(fixture) || !fixture.at || !Number.isInteger(count) || count < 1) return { ...fixture, count };
  const at = fixture.at.slice(0, count);
  const last = fixture.at.at(-1)!;
  for (let i = at.length; i < count; i++) at.push([last[0] + BESIDE_MM * (i - fixture.at.length + 1), last[1]]);
  return { ...fixture, count, at };
}

const BESIDE_MM = 300;

/** Back to being spread evenly. */
export function spreadEvenly({ at: _, ...fixture }: PlacedFixture): Fixture {
  return fixture;
}

/** One lamp at another place, to the centimeter. */
export function movedLamp(fixture: PlacedFixture, index: number, [x, y]: PlanPoint): Fixture {
  const to = (value: number) => Math.round(value / 10) * 10;
  return { ...fixture, at: fixture.at!.map((one, i): PlanPoint => (i === index ? [to(x), to(y)] : one)) };
}
