import { ledOfLight, OTHER_LAMPS } from '../../model/lamp-kinds';
import { lampMeaning } from '../../model/lamp-meaning';
import type { Lamp } from '../../model/project';
import { LAMPS, lampName } from '../words/lamps';
import { integer } from '../words/numbers';
import type { LampFacts } from './lamp-facts';

interface LampFiguresProps {
  readonly kinds: readonly LampFacts[];
  readonly lamps: readonly Lamp[];
}

/** The figures of each kind of lamp in the setting, and what they mean. */
export function LampFigures({ kinds, lamps }: LampFiguresProps) {
  return kinds.map((kind) => (
    <div key={kind.light} className="lamp-figures">
      {kinds.length > 1 && (
        <h3 className="small lamp-where">{LAMPS.inGroups(kind.groups, lampName(kind.light, lamps))}</h3>
      )}
      <Figures kind={kind} lamps={lamps} />
    </div>
  ));
}

function Figures({ kind: { light, record }, lamps }: { readonly kind: LampFacts; readonly lamps: readonly Lamp[] }) {
  if (!record) return null;
  const { cct_k, duv, ra, r } = record;
  const figures = [
    [LAMPS.temperature, cct_k === null ? LAMPS.none : LAMPS.kelvin(Math.round(cct_k))],
    [LAMPS.duv, duv === null ? LAMPS.none : duvText(duv)],
    [LAMPS.ra, ra === null ? LAMPS.none : integer(ra)],
    [LAMPS.r9, r ? integer(r[8]!) : LAMPS.none],
  ] as const;
  return (
    <>
      <dl className="lamp-numbers">
        {figures.map(([term, value]) => (
          <div key={term}>
            <dt>{term}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <p className="quiet">{sourceOf(light, lamps)}</p>
      <p className="lamp-meaning">{lampMeaning(record).join(' ')}</p>
    </>
  );
}

const duvText = (duv: number): string => duv.toFixed(4).replace('-', '\u2212');

/** Where the figures come from, in words. */
function sourceOf(light: string, lamps: readonly Lamp[]): string {
  const own = lamps.find(({ id }) => id === light);
  if (own) return own.note ?? '';
  if (ledOfLight(light)) return light.startsWith('led:') ? LAMPS.modeled : LAMPS.standsFor(light);
  return OTHER_LAMPS.some((one) => one.light === light) ? LAMPS.standard(light) : '';
}
