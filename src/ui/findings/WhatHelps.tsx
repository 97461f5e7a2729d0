import { useId, useState } from 'react';
import type {
  AddedFinding,
  Assessment,
  FindingRef,
  Repair,
  RepairChange,
  Warning,
} from '../../engine/judge/assessment';
import { isRepairable } from '../../engine/judge/repairs/repairable';
import { Swatch } from '../swatch/Swatch';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { REPAIRS } from '../words/repairs';
import { retold } from '../words/spoken';
import './what-helps.css';

/** What the list needs of the page. */
export interface HelpSource {
  readonly paintOf: (change: RepairChange) => SwatchPaint | null;
  readonly settingName: (id: string) => string;
  /** Puts a repair on trial; null while something else is. */
  readonly onTry: ((repair: Repair) => void) | null;
}

interface WhatHelpsProps {
  readonly warning: Warning;
  readonly assessment: Assessment;
  readonly help: HelpSource;
}

const SWATCH_PX = 44;

const isOf = (warning: Warning) => (ref: FindingRef) =>
  ref.code === warning.code && String(ref.surfaces) === String(warning.surfaces);

/** The smallest changes of the library that clear a warning, one step away; nothing for what no finish takes away. */
export function WhatHelps({ warning, assessment, help }: WhatHelpsProps) {
  const [open, setOpen] = useState(false);
  const id = useId();
  if (!isRepairable(warning)) return null;
  const isThis = isOf(warning);
  const repairs = assessment.repairs.filter(({ cleared, softened }) => [...cleared, ...softened].some(isThis));
  const none = assessment.unrepaired.find(isThis);
  return (
    <div className="helps">
      <button
        type="button"
        className="button button-plain"
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
      >
        {REPAIRS.title}
        {assessment.status === 'done' && repairs.length > 0 && <span className="quiet">{` (${repairs.length})`}</span>}
      </button>
      <div id={id} className="helps-list small" hidden={!open}>
        {assessment.status !== 'done' ? (
          <p>{REPAIRS.looking}</p>
        ) : repairs.length === 0 ? (
          <p>{none && retold(none.text)}</p>
        ) : (
          <>
            <ul>
              {repairs.map((repair) => (
                <RepairItem
                  key={repair.changes.map(({ finish, surfaces }) => `${finish} ${surfaces}`).join()}
                  repair={repair}
                  setting={assessment.setting.id}
                  help={help}
                />
              ))}
            </ul>
            <p className="quiet">{REPAIRS.rule}</p>
            {!help.onTry && <p>{REPAIRS.first}</p>}
          </>
        )}
      </div>
    </div>
  );
}

interface RepairItemProps {
  readonly repair: Repair;
  /** The setting on screen. */
  readonly setting: string;
  readonly help: HelpSource;
}

function RepairItem({ repair, setting, help }: RepairItemProps) {
  const { changes, cleared, softened, added, worsens, otherwise_from, changes_decided } = repair;
  const brought = byText(added);
  const { onTry } = help;
  return (
    <li className="help">
      {changes.map((change) => {
        const paint = help.paintOf(change);
        return (
          <div key={change.finish} className="help-change">
            {paint && <Swatch paint={paint} width={SWATCH_PX} height={SWATCH_PX} className="help-swatch" />}
            <p>
              <strong>{REPAIRS.on(change)}</strong> <span className="quiet">{REPAIRS.moves(change)}</span>
            </p>
          </div>
        );
      })}
      {cleared.length > 0 && <p>{REPAIRS.clears(cleared)}</p>}
      {softened.length > 0 && <p>{REPAIRS.softens(softened)}</p>}
      {otherwise_from.length > 0 && <p>{REPAIRS.mayNot(otherwise_from)}</p>}
      {changes_decided && <p>{REPAIRS.decided}</p>}
      {worsens.map((text) => (
        <p key={text}>{retold(text)}</p>
      ))}
      {brought.length > 0 && (
        <div>
          <p>{REPAIRS.brings}:</p>
          <ul className="help-adds">
            {brought.map(([text, settings]) => (
              <li key={text}>
                {settings.includes(setting)
                  ? retold(text)
                  : REPAIRS.addsElsewhere(retold(text), settings.map(help.settingName))}
              </li>
            ))}
          </ul>
        </div>
      )}
      {onTry && (
        <button
          type="button"
          className="button button-outlined"
          aria-label={REPAIRS.tryIt(changes.map(REPAIRS.on).join('; '))}
          onClick={() => onTry(repair)}
        >
          {REPAIRS.try}
        </button>
      )}
    </li>
  );
}

/** What is brought, each sentence once with the settings it is said in. */
function byText(added: readonly AddedFinding[]): (readonly [text: string, settings: readonly string[]])[] {
  const settings = new Map<string, string[]>();
  for (const { text, setting } of added) settings.set(text, [...(settings.get(text) ?? []), setting]);
  return [...settings];
}
