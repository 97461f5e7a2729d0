import { useId, useState } from 'react';
import type { LampRecord } from '../../engine/lamp/lamp-record';
import { ledOfLight, OTHER_LAMPS } from '../../model/lamp-kinds';
import { lampMeaning } from '../../model/lamp-meaning';
import type { Lamp } from '../../model/project';
import { LAMPS, lampName } from '../words/lamps';
import { integer } from '../words/numbers';
import { retold } from '../words/spoken';
import type { LampFacts } from './lamp-facts';

interface LampFiguresProps {
  readonly kinds: readonly LampFacts[];
  readonly lamps: readonly Lamp[];
}

/** What each kind of lamp in the setting does to colors, and one step away the figures that say so. */
export function LampFigures({ kinds, lamps }: LampFiguresProps) {
  return kinds.map((kind) => (
    <div key={kind.light} className="lamp-figures">
      {kinds.length > 1 && (
        <h3 className="small lamp-where">{LAMPS.inGroups(kind.groups, lampName(kind.light, lamps))}</h3>
      )}
      {kind.record && <Meaning light={kind.light} record={kind.record} lamps={lamps} />}
    </div>
  ));
}

interface MeaningProps {
  readonly light: string;
  readonly record: LampRecord;
  readonly lamps: readonly Lamp[];
}

function Meaning({ light, record, lamps }: MeaningProps) {
  const figures = useId();
  const [open, setOpen] = useState(false);
  return (
    <>
      <p>{retold(lampMeaning(record).join(' '))}</p>
      <button
        type="button"
        className="button button-plain lamp-more"
        aria-expanded={open}
        aria-controls={figures}
        onClick={() => setOpen(!open)}
      >
        {LAMPS.figures}
      </button>
      <div id={figures} className="lamp-fold" hidden={!open}>
        <Figures record={record} />
        <p className="quiet">{sourceOf(light, lamps)}</p>
      </div>
    </>
  );
}

function Figures({ record: { cct_k, duv, ra, r } }: Pick<MeaningProps, 'record'>) {
  const figures = [
    [LAMPS.temperature, cct_k === null ? LAMPS.none : LAMPS.kelvin(Math.round(cct_k)), LAMPS.temperatureMeans],
    [LAMPS.duv, duv === null ? LAMPS.none : duvText(duv), LAMPS.duvMeans],
    [LAMPS.ra, ra === null ? LAMPS.none : integer(ra), LAMPS.raMeans],
    [LAMPS.r9, r ? integer(r[8]!) : LAMPS.none, LAMPS.r9Means],
  ] as const;
  return (
    <dl className="lamp-numbers">
      {figures.map(([term, value, means]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd className="lamp-number">{value}</dd>
          <dd className="quiet">{means}</dd>
        </div>
      ))}
    </dl>
  );
}

const duvText = (duv: number): string => duv.toFixed(4).replace('-', '\u2212');

/** Where the figures come from, in words. */
function sourceOf(light: string, lamps: readonly Lamp[]): string {
  const own = lamps.find(({ id }) => id === light);
  if (own) return own.note ?? '';
  if (ledOfLight(light)) return light.startsWith('led:') ? LAMPS.modeled : LAMPS.standsFor(light, lampName(light));
  return OTHER_LAMPS.some((one) => one.light === light) ? LAMPS.standard(light) : '';
}
