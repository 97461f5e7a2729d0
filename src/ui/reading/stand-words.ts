import type { StandReading } from '../../kitchen/study/stand-reading';
import { decimal, percent } from '../words/numbers';
import { STAND } from '../words/reading';

/** Half of the observers see a difference of colors from here on (Paravina et al. 2015). */
const SEEN_DE00 = 0.8;
/** Light that differs by less looks the same from one place to the next (our judgment). */
const SAME_LIGHT = 0.1;
/** A direction counts when it is most of the difference: a share of the larger of the two (our judgment). */
const LEAST_DIRECTION = 0.4;

/** What standing up does to a sample that lay flat, in one sentence. */
export function standSentence({ flat, upright, between_de00 }: StandReading): string {
  const ratio = upright.lux / flat.lux;
  const [, da, db] = upright.average_lab_d65.map((value, i) => value - flat.average_lab_d65[i]!) as [
    number,
    number,
    number,
  ];
  const words: string[] = [];
  if (ratio < 1 - SAME_LIGHT) words.push(STAND.darker);
  if (ratio > 1 + SAME_LIGHT) words.push(STAND.brighter);
  if (between_de00 >= SEEN_DE00) {
    const most = Math.max(Math.abs(da), Math.abs(db));
    if (Math.abs(db) >= LEAST_DIRECTION * most && db !== 0) words.push(db > 0 ? STAND.yellower : STAND.bluer);
    if (Math.abs(da) >= LEAST_DIRECTION * most && da !== 0) words.push(da > 0 ? STAND.pinker : STAND.greener);
  }
  if (words.length === 0) return STAND.same(decimal(between_de00));
  const how = words.length === 1 ? words[0]! : STAND.both(words);
  return STAND.differs(how, decimal(between_de00), percent(ratio));
}
