import { X } from 'lucide-react';
import { useState } from 'react';
import { SAMPLE_STATUSES, type SampleRecord, type SampleVerdict } from '../../model/order/records';
import { Menu } from '../drawer/Menu';
import { Swatch } from '../swatch/Swatch';
import { labelWithoutCode } from '../words/finishes';
import { capital } from '../words/numbers';
import { SAMPLES } from '../words/schedule';
import { dayText } from './day-text';
import { elementText } from './row-words';
import type { ScheduleDoors } from './schedule-props';
import { TextField } from './TextField';

/** The physical samples: of everything the option orders, and of what was asked for besides. */
export function SampleList(doors: ScheduleDoors) {
  const rows = doors.schedule.rows.filter(({ finish, kind }) => finish !== null && kind !== 'extra');
  const finishes = [...new Set([...rows.map(({ finish }) => finish!), ...doors.samples.map(({ finish }) => finish)])];
  return (
    <div className="samples">
      <p className="small samples-intro">{SAMPLES.intro}</p>
      <ul className="samples-list" aria-label={SAMPLES.list}>
        {finishes.map((finish) => (
          <Sample key={finish} finish={finish} doors={doors} />
        ))}
      </ul>
    </div>
  );
}

function Sample({ finish, doors }: { readonly finish: string; readonly doors: ScheduleDoors }) {
  const rows = doors.schedule.rows.filter((row) => row.finish === finish);
  const sample = doors.samples.find((one) => one.finish === finish);
  const label = doors.library.get(finish)?.label ?? finish;
  const paint = rows[0] ? doors.paintOf(rows[0]) : null;
  const change = (changes: Partial<SampleRecord>, continues = false) =>
    doors.onSample({ ...(sample ?? { finish, status: 'wanted', verdicts: [] }), ...changes }, continues);
  return (
    <li className="sample-row">
      <div className="sample-name">
        {paint && <Swatch paint={paint} width={44} height={44} />}
        <div>
          <h3>{capital(labelWithoutCode(label, finish))}</h3>
          <p className="small quiet">{rows.map((row) => `${row.id} ${elementText(row)}`).join(' · ')}</p>
        </div>
      </div>
      <div className="sample-fields">
        <Menu
          label={SAMPLES.status}
          value={sample?.status ?? 'none'}
          choices={[
            ['none', capital(SAMPLES.none)],
            ...SAMPLE_STATUSES.map((one) => [one, capital(SAMPLES.statuses[one])] as const),
          ]}
          onChoose={(status) =>
            status === 'none' ? doors.onRemoveSample(finish) : change({ status, on: doors.today })
          }
        />
        {sample && (
          <>
            <TextField
              label={SAMPLES.since}
              type="date"
              value={sample.on ?? ''}
              onText={(on, continues) => change({ on }, continues)}
            />
            <TextField
              label={SAMPLES.batch}
              value={sample.batch ?? ''}
              onText={(batch, continues) => change({ batch }, continues)}
            />
          </>
        )}
      </div>
      {sample && <Verdicts sample={sample} today={doors.today} onVerdicts={(verdicts) => change({ verdicts })} />}
    </li>
  );
}

interface VerdictsProps {
  readonly sample: SampleRecord;
  readonly today: string;
  readonly onVerdicts: (verdicts: readonly SampleVerdict[]) => void;
}

const FOUND = ['holds', 'fails', 'unsure'] as const;

/** What people saw, by light and person. */
function Verdicts({ sample, today, onVerdicts }: VerdictsProps) {
  const [light, setLight] = useState('');
  const [by, setBy] = useState('');
  const [verdict, setVerdict] = useState<SampleVerdict['verdict']>('holds');
  const isWhole = light.trim() !== '' && by.trim() !== '';
  return (
    <div className="verdicts">
      <ul className="small" aria-label={SAMPLES.verdicts}>
        {sample.verdicts.length === 0 && <li className="quiet">{SAMPLES.nobody}</li>}
        {sample.verdicts.map((one, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: the same may have been seen twice
          <li key={i}>
            <span>
              {one.light}: <b>{SAMPLES.verdict[one.verdict]}</b>, {one.by}, {dayText(one.on)}
            </span>
            <button
              type="button"
              className="button button-tight"
              aria-label={SAMPLES.removeOne(one.light, one.by)}
              onClick={() => onVerdicts(sample.verdicts.filter((other) => other !== one))}
            >
              <X className="icon" aria-hidden="true" />
            </button>
          </li>
        ))}
      </ul>
      <form
        className="verdict-form"
        aria-label={SAMPLES.add}
        onSubmit={(event) => {
          event.preventDefault();
          if (!isWhole) return;
          onVerdicts([...sample.verdicts, { light: light.trim(), by: by.trim(), on: today, verdict }]);
          setLight('');
        }}
      >
        <TextField label={SAMPLES.light} value={light} offered={SAMPLES.lights} onText={setLight} />
        <TextField label={SAMPLES.by} value={by} onText={setBy} />
        <Menu
          label={SAMPLES.found}
          value={verdict}
          choices={FOUND.map((one) => [one, capital(SAMPLES.verdict[one])] as const)}
          onChoose={setVerdict}
        />
        <button
          type="submit"
          className="button button-outlined"
          disabled={!isWhole}
          title={isWhole ? undefined : SAMPLES.needsPerson}
        >
          {SAMPLES.take}
        </button>
      </form>
    </div>
  );
}
