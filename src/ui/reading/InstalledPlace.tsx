import type { InstalledRecord } from '../../engine/judge/assessment';
import { capital, decimal, integer, labText, percent } from '../words/numbers';
import { FACING_WORDS, READING, shiftWord } from '../words/reading';
import { retold } from '../words/spoken';
import { tintSentence } from './tint-source';
import { undertoneText } from './undertone-text';

interface InstalledPlaceProps {
  readonly place: InstalledRecord;
  /** How far the color is known, root mean square CIEDE2000. */
  readonly knownDe00: number;
}

/** How a surface reads here, for one way it faces. */
export function InstalledPlace({ place, knownDe00 }: InstalledPlaceProps) {
  return (
    <div className="reading-place">
      <h4>{capital(FACING_WORDS[place.facing])}</h4>
      <p>{tintSentence(place)}</p>
      <dl className="numbers">
        <dt>{READING.lab}</dt>
        <dd>{labText(place.lab_d65)}</dd>
        <dt>{READING.name}</dt>
        <dd>{capital(retold(place.name))}</dd>
        <dt>{READING.undertone}</dt>
        <dd>{undertoneText(place.undertone, knownDe00)}</dd>
        <dt>{READING.shift}</dt>
        <dd>{READING.shiftValue(decimal(place.shift_de00), shiftWord(place.shift_de00))}</dd>
        <dt>{READING.light}</dt>
        <dd>{READING.lxMean(integer(place.illuminance_lx), integer(place.lux_min))}</dd>
        <dt>{READING.lightness}</dt>
        <dd>{READING.lightnessValue(decimal(place.lightness_in_room))}</dd>
        <dt>{READING.view}</dt>
        <dd>{percent(place.view_share)}</dd>
      </dl>
    </div>
  );
}
