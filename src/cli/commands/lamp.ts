import { type LampRecord, lampRecord } from '../../engine/lamp/lamp-record';
import { type Result, success } from '../../engine/result';
import type { ReflectanceSpd } from '../../engine/spectrum/types';
import { parseFidelitySamples } from '../../io/fidelity-samples';
import { readArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { readLights } from '../light-option';
import { readText } from '../read-text';
import { lampText } from '../text/lamp-text';

const OPTIONS = { ...COMMON_OPTIONS, column: { type: 'string' }, samples: { type: 'string' } } as const;

/** A lamp with its name, as `lamp --json` prints it. */
export interface NamedLampRecord extends LampRecord {
  readonly name: string;
  /** Made from color temperature and Ra. */
  readonly modeled: boolean;
}

/**
 * `lamp LIGHT`: what a lamp does to colors. JSON is one object for one lamp and `{ lamps: [...] }` for a file with several.
 * Rf and Rg are there only with --samples, the user's own copy of the 99 samples of CIE 224.
 */
export const lamp: Command = {
  name: 'lamp',
  usage: 'lamp LIGHT-OR-FILE [--column NAME] [--samples FILE] [--json]',
  summary:
    'Color temperature, tint and color rendering of a lamp: LED-B2, led:2700,90, "0.6 led:2700,90 + 0.4 FL11" or a ' +
    'spectrum FILE (CSV, CGATS, TM-27); one lamp of several by "FILE#NAME" or --column NAME. ' +
    'JSON of a file with several lamps is { "lamps": [...] }. --samples: your copy of the 99 samples of CIE 224, for Rf.',
  hasNotes: true,
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The lamp', this.usage);
    if (!given.ok) return given;
    const { subject, values } = given.value;
    const lights = readLights(subject, values.column);
    if (!lights.ok) return lights;
    const samples = values.samples === undefined ? success(undefined) : readSamples(values.samples);
    if (!samples.ok) return samples;
    const records = lights.value.map(
      ({ name, spd, modeled }): NamedLampRecord => ({ name, modeled, ...lampRecord(spd, samples.value) }),
    );
    const [only, ...more] = records;
    const json = more.length === 0 ? only : { lamps: records };
    const notices = [...(lights.notices ?? []), ...(samples.notices ?? [])];
    return success({ json, text: records.map((one) => lampText(one, values.samples)).join('\n\n'), notices });
  },
};

function readSamples(file: string): Result<readonly ReflectanceSpd[]> {
  const text = readText(file);
  return text.ok ? parseFidelitySamples(text.value, file) : text;
}
