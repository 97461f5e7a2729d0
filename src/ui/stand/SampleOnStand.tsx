import type { SurfaceId } from '../../engine/surface';
import type { SampleThere, StandReadings } from '../../kitchen/study/stand-samples';
import { decimal, integer, labText, percent } from '../words/numbers';
import { READING, shiftWord } from '../words/reading';
import { SAMPLE_STAND } from '../words/stand';

interface SampleOnStandProps {
  readonly readings: StandReadings;
  readonly surface: SurfaceId;
}

/** A sample of the stand in numbers, lying and standing, and what its light is and is not. */
export function SampleOnStand({ readings: { light, samples }, surface }: SampleOnStandProps) {
  const sample = samples.find((one) => one.surface === surface);
  if (!sample) return null;
  return (
    <section className="reading-part">
      <h3>{SAMPLE_STAND.title}</h3>
      <p className="small quiet">{SAMPLE_STAND.explained}</p>
      <dl className="numbers">
        <dt>{SAMPLE_STAND.flat}</dt>
        <dd>{numbersOf(sample.flat)}</dd>
        <dt>{SAMPLE_STAND.upright}</dt>
        <dd>{numbersOf(sample.upright)}</dd>
        <dt>{SAMPLE_STAND.between}</dt>
        <dd>{READING.shiftValue(decimal(sample.between_de00), shiftWord(sample.between_de00))}</dd>
      </dl>
      <p>
        {SAMPLE_STAND.share(
          percent(light.upright_lux / light.flat_lux),
          percent(light.worktop_upright_lux / light.flat_lux),
        )}
      </p>
    </section>
  );
}

const numbersOf = ({ lux, lab_d65, lightness }: SampleThere): string =>
  SAMPLE_STAND.numbers(READING.lx(integer(lux)), labText(lab_d65), decimal(lightness));
