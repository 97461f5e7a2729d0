import type { FinishClass } from '../finish/types';

/**
 * How far the curve of a material may depart from the one computed with: standard deviations on the scale of
 * z = atanh(2 rho - 1). Parts are of the curve's own rise, greatest less least z from 400 to 700 nm: what absorbs more departs
 * more (measured curves bear out the rise better than chroma or steepness).
 */
export interface MaterialSpread {
  /** Smooth departures of a flat curve: a gray is mixed, too. */
  readonly floor: number;
  /** Smooth departures, part of the rise. */
  readonly smooth: number;
  /** Distance over which smooth departures forget themselves. */
  readonly correlation_nm: number;
  /** Part of the edge of titanium white that may be there, 0-1. */
  readonly titanium: number;
  /** Absorption growing toward the ultraviolet beyond that of the smoothest curve: mean and standard deviation. */
  readonly violet: readonly [mean: number, deviation: number];
  /** Edge of yellow pigments, part of the rise of a yellow colour. */
  readonly yellowEdge: number;
  /** Edge of red iron oxide, part of the rise of a yellow colour. */
  readonly redEdge: number;
  /** Rise in the far red beyond that of the smoothest curve: mean and standard deviation. */
  readonly farRed: readonly [mean: number, deviation: number];
  /** Far-red rise of blue and green pigments, part of the rise of a blue colour. */
  readonly bluePigment: number;
}

// The figures of paint are the most likely ones for 61 measured curves about their smoothest, the smooth part a fifth wider so
// that nine tenths fall inside: 24 chart patches (Ohta 1997), the test colour samples of CIE 13.3 and 23 matt Munsell chips of
// the University of Eastern Finland. Leaving one of the sets out changes the smooth part by a tenth at most. The floor
// lies between grays of a black pigment (0.01) and those mixed of colours alone (0.12; Kubelka-Munk, 7 pigments).
// For near-neutrals the mean and 95th percentile of members about the nominal under ten lights are 0.6 and 1.7 CIEDE2000,
// where measured curves of 310 chips have 0.66 and 1.76.
const PAINT: MaterialSpread = {
  floor: 0.035,
  smooth: 0.17,
  correlation_nm: 40,
  titanium: 1,
  violet: [0, 0.1],
  yellowEdge: 0.3,
  redEdge: 0.1,
  farRed: [0, 0],
  bluePigment: 0.6,
};

// Scaled to 44 measured stones, concretes and bricks about their smoothest curves: mean 0.23, 95th percentile 0.54. The shapes
// are those of six rocks (granites, quartzite, andesite, shales of the Johns Hopkins and USGS libraries): all fall in the
// violet and rise in the far red more than the smoothest curve does.
const STONE: MaterialSpread = {
  floor: 0.015,
  smooth: 0.06,
  correlation_nm: 60,
  titanium: 0,
  violet: [0.08, 0.04],
  yellowEdge: 0.08,
  redEdge: 0.15,
  farRed: [0.05, 0.04],
  bluePigment: 0.2,
};

// Scaled to 8 measured woods about their sigmoids, mean 0.22, 95th percentile 0.55, with a fifth more: 8 are few.
const WOOD: MaterialSpread = {
  floor: 0.01,
  smooth: 0.045,
  correlation_nm: 60,
  titanium: 0,
  violet: [0, 0.06],
  yellowEdge: 0.05,
  redEdge: 0.06,
  farRed: [0, 0.02],
  bluePigment: 0,
};

// The rest is our judgment, by what colours the material: stone dust bound with a few white, black and iron pigments ...
const BOUND: MaterialSpread = { ...PAINT, floor: 0.03, smooth: 0.14 };
// ... process inks, which are more structured than house paint ...
const PRINTED: MaterialSpread = { ...PAINT, floor: 0.04, smooth: 0.2 };
// ... glazes made white by zircon or tin rather than titania ...
const GLAZE: MaterialSpread = { ...PAINT, titanium: 0.5 };
// ... a fired body with iron in it under a thin print, or cement with iron pigments and perhaps titanium white.
const PORCELAIN: MaterialSpread = { ...PAINT, floor: 0.025, smooth: 0.12, titanium: 0.3 };
const GROUT: MaterialSpread = { ...STONE, floor: 0.02, smooth: 0.1, titanium: 0.5 };
// Metals are smooth; those of copper have an edge where its interband transitions begin (2.1 eV, 590 nm; from memory).
const METAL: MaterialSpread = { ...STONE, violet: [0, 0], farRed: [0, 0.05], yellowEdge: 0.3 };

export const CLASS_SPREAD: Readonly<Record<FinishClass, MaterialSpread>> = {
  paint: PAINT,
  stone: STONE,
  wood: WOOD,
  engineered: BOUND,
  'solid surface': BOUND,
  laminate: PRINTED,
  vinyl: PRINTED,
  glazed: GLAZE,
  porcelain: PORCELAIN,
  // What one sees of it is the paint on its back.
  glass: PAINT,
  grout: GROUT,
  metal: METAL,
};
