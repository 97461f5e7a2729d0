import { checkKitchen } from '../check-kitchen';
import type { Fixture, FixtureKind } from '../fixture';
import type { Kitchen } from '../kitchen';

/** Light from the ceiling that gives some 300 lx over the floor and, with strips, 500 lx and more on the counter; lm/m2. */
const CEILING_LM_PER_M2 = 430;
const PANEL_LM = 1300;
const MOST = 24;
const PER_PENDANT = 700;

/** A usual lamp of each kind for a kitchen; whether it fits is another matter. */
export function usualFixture(kitchen: Kitchen, kind: FixtureKind): Fixture {
  const { room, island } = kitchen;
  const area = (room.width * room.depth) / 1e6;
  const lumens = area * CEILING_LM_PER_M2;
  switch (kind) {
    case 'panel': {
      const count = Math.min(MOST, Math.max(2, Math.ceil(lumens / PANEL_LM)));
      return {
        kind,
        id: 'ceiling',
        group: 'ceiling',
        beam: { kind: 'wide' },
        count,
        width: 200,
        length: 200,
        lumens_each: Math.round(lumens / count / 50) * 50,
      };
    }
    case 'downlight': {
      const count = Math.min(MOST, Math.max(4, Math.ceil(lumens / 800)));
      return {
        kind,
        id: 'downlights',
        group: 'ceiling',
        beam: { kind: 'spread', angle_deg: 60 },
        count,
        diameter: 90,
        lumens_each: Math.round(lumens / count / 50) * 50,
      };
    }
    case 'under-cabinet':
      return {
        kind,
        id: 'under-cabinet',
        group: 'under-cabinet',
        beam: { kind: 'wide' },
        run: 'front',
        width: 20,
        lumens_per_m: 600,
      };
    case 'strip':
      return {
        kind,
        id: 'strip',
        group: 'ceiling',
        beam: { kind: 'wide' },
        run: 'above-wall-units',
        width: 20,
        lumens_per_m: 600,
      };
    case 'pendant': {
      const length = island ? Math.max(island.width, island.depth) : 0;
      return {
        kind,
        id: 'pendants',
        group: 'pendant',
        beam: { kind: 'spread', angle_deg: 100 },
        count: Math.min(4, Math.max(1, Math.round(length / PER_PENDANT))),
        diameter: 260,
        height: 1650,
        lumens_each: 450,
      };
    }
    case 'hood':
      return {
        kind,
        id: 'hood',
        group: 'hood',
        beam: { kind: 'spread', angle_deg: 90 },
        count: 2,
        diameter: 60,
        lumens_each: 250,
      };
  }
}

const USUAL: readonly FixtureKind[] = ['panel', 'under-cabinet', 'pendant', 'hood'];

/** The lamps of the usual kinds that a kitchen has places for. */
export const usualFixtures = (kitchen: Kitchen): readonly Fixture[] =>
  fitFixtures(
    kitchen,
    USUAL.map((kind) => usualFixture(kitchen, kind)),
  ).fixtures;

/**
 * A kitchen with as many of the lamps as fit: as they are; those with places of their own spread evenly where these no
 * longer fit; fewer; else left out.
 */
export function fitFixtures(kitchen: Kitchen, fixtures: readonly Fixture[]): Kitchen {
  let fitted: Kitchen = { ...kitchen, fixtures: [] };
  for (const fixture of fixtures) {
    for (const one of variants(fixture)) {
      const next = { ...fitted, fixtures: [...fitted.fixtures, one] };
      if (checkKitchen(next, '').length > 0) continue;
      fitted = next;
      break;
    }
  }
  return fitted;
}

function* variants(fixture: Fixture): Generator<Fixture> {
  yield fixture;
  if (!('count' in fixture)) return;
  const spread = withoutPlaces(fixture);
  for (let count = fixture.count; count >= 1; count--) yield { ...spread, count };
}

function withoutPlaces(fixture: Extract<Fixture, { readonly count: number }>): typeof fixture {
  if (fixture.kind === 'hood') return fixture;
  const { at: _, ...spread } = fixture;
  return spread;
}
