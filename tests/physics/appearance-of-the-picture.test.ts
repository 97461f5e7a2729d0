import { describe, expect, it } from 'vitest';
import { adaptationDegree } from '../../src/engine/appearance/viewing-conditions';
import { chromaticityFromXyz } from '../../src/engine/color/chromaticity';
import { apply } from '../../src/engine/color/matrix3';
import { xyzFromEmission } from '../../src/engine/color/xyz';
import { lightById, perLux } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { SEEN_BY, type SeenBy } from '../../src/kitchen/seen-by';
import { exposureMatrix } from '../../src/kitchen/study/exposure';
import type { RoomBasis } from '../../src/kitchen/study/room-study';
import type { SettingLight } from '../../src/kitchen/study/setting-light';

// What exposure asks of a room: light on its worktop, and on what is seen of it, here the same everywhere.
const LX = 300;
const basis = (lx = LX) =>
  ({ worktopLight: Float64Array.of(lx), referenceView: [new Float64Array(50).fill(lx)] }) as unknown as RoomBasis;
const under = (light: string): SettingLight => ({
  id: 'test',
  levels: [1],
  spectra: [perLux(lightById(light)!)],
  daylight: null,
});

/** Linear sRGB of a perfect white in the light of the room. */
function whiteSeen(light: string, seenBy: SeenBy, lx = LX): [number, number, number] {
  const setting = under(light);
  const { x, y, z } = xyzFromEmission(setting.spectra[0]!, observer2);
  return apply(exposureMatrix(basis(lx), setting, seenBy), [x * lx, y * lx, z * lx]);
}

// IEC 61966-2-1: linear sRGB to XYZ, printed with four decimals.
const xyOf = ([r, g, b]: readonly [number, number, number]) =>
  chromaticityFromXyz({
    x: 0.4124 * r + 0.3576 * g + 0.1805 * b,
    y: 0.2126 * r + 0.7152 * g + 0.0722 * b,
    z: 0.0193 * r + 0.1192 * g + 0.9505 * b,
  });

describe('the picture', () => {
  it.each(['LED-B1', 'A', 'FL2', 'D65', 'D75'])('shows white as neutral to an eye used to %s', (light) => {
    const [r, g, b] = whiteSeen(light, 'used-to-it');
    // The matrix to sRGB and the white of the table agree to about 1e-4.
    expect(Math.abs(r / g - 1)).toBeLessThan(1e-3);
    expect(Math.abs(b / g - 1)).toBeLessThan(1e-3);
  });

  it.each(['LED-B1', 'A', 'FL2', 'D65', 'D75'])('shows a daylight camera the chromaticity of %s itself', (light) => {
    const own = chromaticityFromXyz(xyzFromEmission(lightById(light)!, observer2));
    const shown = xyOf(whiteSeen(light, 'daylight-camera'));
    expect(Math.abs(shown.x - own.x)).toBeLessThan(1e-3);
    expect(Math.abs(shown.y - own.y)).toBeLessThan(1e-3);
  });

  it('leaves an eye that notices the light a part of its tint, less in brighter rooms', () => {
    const tint = (seenBy: SeenBy, lx?: number) => {
      const [r, , b] = whiteSeen('LED-B1', seenBy, lx);
      return Math.log(r / b);
    };
    expect(tint('notices-it')).toBeGreaterThan(0.05);
    expect(tint('notices-it')).toBeLessThan(tint('daylight-camera') / 4);
    expect(tint('notices-it', 50)).toBeGreaterThan(tint('notices-it', 3000));
    // CIE 159:2004: an eye is at least 82 % adapted in an average surround; 300 lx on the worktop are 19 cd/m2.
    expect(adaptationDegree(1, (0.2 * LX) / Math.PI)).toBeCloseTo(1 - Math.exp(-(60 / Math.PI + 42) / 92) / 3.6, 12);
  });

  it('is the same to all three under D65, but for what rounding leaves', () => {
    const neutral = whiteSeen('D65', 'used-to-it');
    for (const seenBy of SEEN_BY) {
      whiteSeen('D65', seenBy).forEach((value, i) => {
        expect(Math.abs(value / neutral[i]! - 1)).toBeLessThan(1e-3);
      });
    }
  });

  it('clips no more where white keeps a tint: its strongest channel is as bright as neutral white', () => {
    for (const light of ['LED-B1', 'A', 'FL2', 'D75']) {
      const neutral = Math.max(...whiteSeen(light, 'used-to-it'));
      for (const seenBy of SEEN_BY) expect(Math.max(...whiteSeen(light, seenBy))).toBeCloseTo(neutral, 6);
    }
  });

  it('is black, not broken, where all lights are off', () => {
    const dark: SettingLight = { ...under('A'), levels: [0] };
    for (const seenBy of SEEN_BY)
      expect(exposureMatrix(basis(), dark, seenBy).every((value) => value === 0)).toBe(true);
  });
});
