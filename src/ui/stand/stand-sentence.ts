import type { SurfaceId } from '../../engine/surface';
import type { Arrangement } from '../../kitchen/stand/types';
import type { StandReadings, StandSampleReading } from '../../kitchen/study/stand-samples';
import { surfaceName } from '../words/engine-words';
import { decimal } from '../words/numbers';
import { SAMPLE_STAND as WORDS } from '../words/stand';

/** Half of the observers see a difference of colors from here on (Paravina et al. 2015). */
const SEEN_DE00 = 0.8;
/** Most of a difference is lightness from this share of it on (our judgment). */
const MOSTLY = 0.6;

/** What lying down or standing up does to a sample: to the one chosen, else to the first that is decided; null where none changes place. */
export function standSentence(
  { samples }: StandReadings,
  arrangement: Arrangement,
  chosen: SurfaceId | null,
): string | null {
  const own = samples.find(({ surface }) => surface === chosen);
  if (arrangement === 'as-in-room') {
    const sample = own ?? samples.find(({ surface }) => surface === 'counter') ?? samples[0];
    return sample ? inItsPlane(sample) : null;
  }
  const moved = samples.filter(({ position, placed }) => position !== placed);
  const sample = own && own.position !== own.placed ? own : moved[0];
  return sample ? inAnother(sample) : null;
}

function inItsPlane({ surface, flat, upright, between_de00 }: StandSampleReading): string {
  const name = nameOf(surface);
  const step = flat.lightness - upright.lightness;
  if (between_de00 < SEEN_DE00) return WORDS.same(name, decimal(between_de00));
  return step >= 0 ? WORDS.flatLighter(name, decimal(step)) : WORDS.flatDarker(name, decimal(-step));
}

function inAnother({ surface, placed, flat, upright, between_de00 }: StandSampleReading): string {
  const name = nameOf(surface);
  if (between_de00 < SEEN_DE00) return WORDS.same(name, decimal(between_de00));
  const step = placed === 'up' ? flat.lightness - upright.lightness : upright.lightness - flat.lightness;
  if (Math.abs(step) < MOSTLY * between_de00) return WORDS.misleadsColor(name, decimal(between_de00));
  const misleads = placed === 'up' ? WORDS.misleadsFlat : WORDS.misleadsUpright;
  return misleads(name, decimal(Math.abs(step)), step > 0 ? WORDS.lighter : WORDS.darker);
}

const nameOf = (surface: SurfaceId): string => WORDS.sample(surfaceName(surface));
