import { describe, expect, it } from 'vitest';
import { whiteOf } from '../../src/engine/color/xyz';
import { bandMeansFromReflectance } from '../../src/engine/light/bands';
import { leastLux, nodeLux } from '../../src/engine/light/least-light';
import { buildNodes } from '../../src/engine/light/nodes';
import { solveGroup } from '../../src/engine/light/solve';
import { surfaceLights } from '../../src/engine/light/surface-light';
import { tintSources } from '../../src/engine/light/tint-source';
import { buildTransport } from '../../src/engine/light/transport';
import { reflectanceSpd, wavelengthNm } from '../../src/engine/spectrum/grid';
import { lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { perLux } from '../../src/engine/spectrum/per-lux';
import type { ReflectanceSpd } from '../../src/engine/spectrum/types';
import type { SurfaceId } from '../../src/engine/surface';
import { type LightPart, lightParts } from '../../src/kitchen/study/light-parts';
import { placeIrradiance } from '../../src/kitchen/study/place-irradiance';
import type { SettingLight } from '../../src/kitchen/study/setting-light';
import type { SolvedScheme } from '../../src/kitchen/study/solved-scheme';
import type { Room } from '../../src/kitchen/types';
import { boxRects, ceilingLamp, roomOf } from './box-room';

// A box with the light groups of a kitchen: a ceiling lamp (group 4) and another under the other half (group 5).
const SURFACES: readonly SurfaceId[] = ['floor', 'ceiling', 'wall'];
const [CEILING_LAMPS, UNDER_CABINET] = [4, 5] as const;
const light = roomOf(
  boxRects(3, 3, 2.5, [0, 1, 2, 2, 2, 2]),
  { lamps: [ceilingLamp(1, 1, 2.5, 0.5, 3000, CEILING_LAMPS), ceilingLamp(2.4, 2.4, 2.5, 0.3, 800, UNDER_CABINET)] },
  SURFACES,
);
const transport = buildTransport(light, { patchSize: 0.5 });
const nodes = buildNodes(light, transport, { spacing: 0.5 });
const places = surfaceLights(light, transport, nodes);
const basis = {
  room: { surfaces: SURFACES, light } as unknown as Room,
  transport,
  worktopLight: places.find(({ surface }) => surface === 0)!.direct,
};

const gray = (value: number) => reflectanceSpd(new Float64Array(81).fill(value));
const edge = (low: number, high: number, at_nm: number) =>
  reflectanceSpd(
    Array.from({ length: 81 }, (_, i) => low + (high - low) / (1 + Math.exp((at_nm - wavelengthNm(i)) / 30))),
  );
const orange = edge(0.1, 0.6, 580);
const blue = edge(0.6, 0.1, 500);

/** Levels of the two lamps and their lights; the rest is off. */
function settingOf(
  levels: readonly [number, number],
  lights: readonly [string, string] = ['D65', 'D65'],
): SettingLight {
  const off = perLux(lightById('D65')!);
  const on = (group: number) => (group === CEILING_LAMPS ? 0 : group === UNDER_CABINET ? 1 : -1);
  return {
    id: 'test',
    levels: light.groups.map((_, group) => (on(group) < 0 ? 0 : levels[on(group) as 0 | 1])),
    spectra: light.groups.map((_, group) => (on(group) < 0 ? off : perLux(lightById(lights[on(group) as 0 | 1])!))),
    daylight: null,
  };
}

function solved(finishes: readonly [ReflectanceSpd, ReflectanceSpd, ReflectanceSpd]): SolvedScheme {
  const reflectance = Float32Array.from(finishes.flatMap((rho) => [...bandMeansFromReflectance(rho)]));
  const radiosity = transport.direct.map((direct, group) =>
    group === CEILING_LAMPS || group === UNDER_CABINET ? solveGroup(transport, reflectance, direct) : null,
  );
  return { scheme: { reflectance } as SolvedScheme['scheme'], radiosity };
}

const sumOf = (parts: readonly LightPart[], of: 'lux' | 'share' | 'tint_share') =>
  parts.reduce((sum, part) => sum + part[of], 0);
/** What leaves a surface last; a lamp group may have the name of a surface. */
const bouncedOff = (parts: readonly LightPart[], surface: SurfaceId) =>
  parts.find(({ from }) => from.kind === 'bounce' && from.surface === surface);
const onFloor = places.find(({ surface }) => surface === 0)!;
const onCeiling = places.find(({ surface }) => surface === 1)!;

describe('the parts of the light at a place', () => {
  it('sum to the light there, whatever lamps and finishes', () => {
    const scheme = solved([orange, gray(0.8), blue]);
    const setting = settingOf([0.7, 1], ['LED-B2', 'FL11']);
    for (const place of places) {
      const parts = lightParts(place, basis, scheme, setting);
      const { lux } = placeIrradiance(place, scheme, setting);
      // Rounding: the same numbers in another order.
      expect(sumOf(parts, 'lux') / lux).toBeCloseTo(1, 9);
      expect(sumOf(parts, 'share')).toBeCloseTo(1, 12);
      expect(sumOf(parts, 'tint_share')).toBeCloseTo(1, 9);
      expect(parts.map((part) => part.lux)).toEqual(parts.map((part) => part.lux).sort((a, b) => b - a));
    }
  });

  it('are those of a linear system: dimming a lamp scales what comes from it and keeps its shares', () => {
    const scheme = solved([orange, gray(0.8), blue]);
    const [full, half] = [1, 0.5].map((level) => lightParts(onFloor, basis, scheme, settingOf([level, 0])));
    full!.forEach((part, i) => {
      expect(half![i]!.from).toEqual(part.from);
      expect(half![i]!.lux / part.lux).toBeCloseTo(0.5, 9);
      expect(half![i]!.tint_share).toBeCloseTo(part.tint_share, 6);
    });
  });

  it('of a black room are its lamps; the ceiling of a room with nothing but a floor is lit by the floor', () => {
    const black = lightParts(onFloor, basis, solved([gray(0), gray(0), gray(0)]), settingOf([1, 1]));
    expect(black.map(({ from }) => from.kind)).toEqual(['direct', 'direct']);
    const up = lightParts(onCeiling, basis, solved([gray(0.5), gray(0), gray(0)]), settingOf([1, 0]));
    expect(up.map(({ from }) => from)).toEqual([{ kind: 'bounce', surface: 'floor' }]);
    // Half of what falls on the floor leaves it, and not all of that goes up.
    expect(up[0]!.lux).toBeLessThan(0.5 * onFloor.direct[CEILING_LAMPS]!);
  });
});

describe('the parts of a tint', () => {
  it('belong to the one colored surface in a black room', () => {
    const parts = lightParts(onCeiling, basis, solved([orange, gray(0), gray(0)]), settingOf([1, 0]));
    expect(bouncedOff(parts, 'floor')!.tint_share).toBeCloseTo(1, 12);
  });

  it('are none in a gray room under one light', () => {
    for (const part of lightParts(onFloor, basis, solved([gray(0.3), gray(0.8), gray(0.5)]), settingOf([1, 1]))) {
      expect(part.tint_share).toBe(0);
    }
  });

  it('may be against it: a blue wall in a room that the floor turns orange', () => {
    const parts = lightParts(
      onCeiling,
      basis,
      solved([edge(0.1, 0.8, 560), gray(0.8), edge(0.25, 0.2, 500)]),
      settingOf([1, 0]),
    );
    expect(bouncedOff(parts, 'floor')!.tint_share).toBeGreaterThan(1);
    expect(bouncedOff(parts, 'wall')!.tint_share).toBeLessThan(0);
    expect(sumOf(parts, 'tint_share')).toBeCloseTo(1, 9);
  });

  it('belong to a lamp of another color than the adopted white', () => {
    // The adopted white is that of the floor, mostly the first lamp's; a place in the second's light alone is tinted by that alone.
    const setting = settingOf([1, 1], ['D65', 'A']);
    const scheme = solved([gray(0), gray(0), gray(0)]);
    const place = { direct: Float64Array.from(light.groups, (_, g) => (g === UNDER_CABINET ? 100 : 0)), gather: [] };
    const [only, ...more] = lightParts(place, basis, scheme, setting);
    expect(more).toEqual([]);
    expect(only).toMatchObject({ from: { kind: 'direct', group: 'under-cabinet' }, share: 1 });
    expect(only!.tint_share).toBeCloseTo(1, 12);
  });

  it('are of the light that carries it, where the cause of it may be another: a white ceiling hands on the floor', () => {
    const scheme = solved([orange, gray(0.9), gray(0)]);
    const setting = settingOf([1, 0]);
    const carried = lightParts(onFloor, basis, scheme, setting);
    expect(bouncedOff(carried, 'ceiling')!.tint_share).toBeCloseTo(1, 9);
    const { levels, spectra } = setting;
    const adoptedWhite = whiteOf(perLux(lightById('D65')!), observer2);
    const { reflectance } = scheme.scheme;
    const steps = tintSources(
      transport,
      { reflectance, levels, spectra, radiosity: scheme.radiosity, adoptedWhite },
      places,
    );
    let step = steps.next();
    while (!step.done) step = steps.next();
    const [cause] = step.value[places.indexOf(onFloor)]!;
    expect(SURFACES[cause!.surface]).toBe('floor');
    expect(cause!.share).toBeGreaterThan(0.99);
  });
});

describe('the darkest place of a surface', () => {
  it('has the least of direct and bounced light together', () => {
    const scheme = solved([gray(0.4), gray(0.8), gray(0.6)]);
    const { levels } = settingOf([1, 0.5]);
    // Gray: one band stands for all, and a lux of lamp light stays a lux.
    const patchLux = Float64Array.from({ length: transport.patches.count }, (_, p) =>
      levels.reduce((sum, level, g) => sum + level * (scheme.radiosity[g]?.[24 * p] ?? 0), 0),
    );
    const bounced = nodeLux(nodes, patchLux);
    for (const place of places) {
      const least = leastLux(light, nodes, place, levels, bounced);
      const mean = placeIrradiance(place, scheme, settingOf([1, 0.5])).lux;
      const directs = Array.from({ length: place.directAt.length / levels.length }, (_, i) =>
        levels.reduce((sum, level, g) => sum + level * place.directAt[i * levels.length + g]!, 0),
      );
      expect(least).toBeLessThan(mean);
      expect(least).toBeGreaterThanOrEqual(Math.min(...directs) + Math.min(...bounced) - 1e-6);
    }
  });

  it('is the mean where light is the same all over', () => {
    const even = { ...onFloor, directAt: onFloor.directAt.map(() => 10) };
    const bounced = new Float64Array(nodes.rows.count).fill(7);
    expect(leastLux(light, nodes, even, [1, 0, 0, 0, 0, 0.5], bounced)).toBeCloseTo(22, 9);
  });
});
