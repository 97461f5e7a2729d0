import type { SurfaceId } from '../../engine/surface';
import type { FinishInLights, FinishUnderLight } from '../../kitchen/study/finish-in-lights';
import { SHIFT_WORDS } from '../../kitchen/study/light-verdict-words';
import { surfaceName } from '../words/engine-words';
import { capital, decimal } from '../words/numbers';
import { settingShortName } from '../words/picture';
import { IN_LIGHTS } from '../words/reading';
import { retold } from '../words/spoken';
import { VerdictMark } from './VerdictMark';

export interface LightsPartProps {
  /** Null while it is being worked out. */
  readonly inLights: FinishInLights | null;
  /** Id of the setting on screen. */
  readonly setting: string;
  /** Surfaces whose finish can be held beside it. */
  readonly others: readonly SurfaceId[];
  readonly beside: SurfaceId | null;
  readonly onBeside: (surface: SurfaceId | null) => void;
}

/** What each light makes of the finish, and whether it stays matched with another. */
export function LightsPart({ inLights, setting, others, beside, onBeside }: LightsPartProps) {
  const lights = inLights?.lights ?? [];
  const settings = lights.filter(({ kind }) => kind === 'setting');
  const references = lights.filter((light) => light.kind === 'reference' && !settings.some(isSameLight(light)));
  return (
    <section className="reading-part" aria-label={IN_LIGHTS.title}>
      <h3>{IN_LIGHTS.title}</h3>
      <p className="small quiet">{IN_LIGHTS.note}</p>
      {inLights === null ? (
        <p>{IN_LIGHTS.pending}</p>
      ) : (
        <>
          <table className="lights">
            <thead>
              <tr>
                <th scope="col">{IN_LIGHTS.light}</th>
                <th scope="col">{IN_LIGHTS.reads}</th>
                <th scope="col">{IN_LIGHTS.change}</th>
              </tr>
            </thead>
            <LightRows title={IN_LIGHTS.settings} lights={settings} setting={setting} />
            <LightRows title={IN_LIGHTS.others} lights={references} setting={null} />
          </table>
          <p className="small quiet">{restsOn(inLights)}</p>
        </>
      )}
      <h4>{IN_LIGHTS.pair}</h4>
      <label className="field">
        <span className="label">{IN_LIGHTS.beside}</span>
        <select
          className="select"
          value={beside ?? ''}
          onChange={(event) => onBeside((event.target.value || null) as SurfaceId | null)}
        >
          <option value="">{IN_LIGHTS.alone}</option>
          {others.map((one) => (
            <option key={one} value={one}>
              {surfaceName(one)}
            </option>
          ))}
        </select>
      </label>
      {inLights?.beside && <p aria-live="polite">{retold(inLights.beside.sentence)}</p>}
    </section>
  );
}

/** A standard light that a setting burns alone stands in the table already: alike in all that is shown. */
const isSameLight =
  (light: FinishUnderLight) =>
  ({ cct_k, duv, average }: FinishUnderLight): boolean =>
    Math.abs((cct_k ?? 0) - (light.cct_k ?? 0)) < 0.5 &&
    Math.abs((duv ?? 0) - (light.duv ?? 0)) < 5e-5 &&
    Math.abs(average.shift_de00 - light.average.shift_de00) < 0.05;

interface LightRowsProps {
  readonly title: string;
  readonly lights: readonly FinishUnderLight[];
  readonly setting: string | null;
}

function LightRows({ title, lights, setting }: LightRowsProps) {
  if (lights.length === 0) return null;
  return (
    <tbody>
      <tr>
        <th colSpan={3} scope="rowgroup" className="lights-group">
          {title}
        </th>
      </tr>
      {lights.map((light) => (
        <tr key={light.id} aria-current={light.id === setting ? 'true' : undefined}>
          <th scope="row">
            {settingShortName(light.name)} <span className="quiet lights-kelvin">{IN_LIGHTS.kelvin(light.cct_k)}</span>
            {light.id === setting && <span className="quiet"> ({IN_LIGHTS.now})</span>}
          </th>
          <td>{capital(retold(light.average.name))}</td>
          <td>
            <span className="lights-verdict">
              <VerdictMark verdict={light.average.verdict} />
              {capital(SHIFT_WORDS[light.average.verdict])}
            </span>
            <span className="quiet">{rangeText(light)}</span>
          </td>
        </tr>
      ))}
    </tbody>
  );
}

function rangeText({ average }: FinishUnderLight): string {
  const [from, to] = average.shift_from_to_de00;
  return IN_LIGHTS.range(decimal(from), decimal(to));
}

function restsOn({ average }: FinishInLights): string {
  if (average.spectrum_source === 'measured') return IN_LIGHTS.measured;
  return average.spectrum_source === 'mixed' ? IN_LIGHTS.mixed : IN_LIGHTS.guessed;
}
