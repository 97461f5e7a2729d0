import { existsSync } from 'node:fs';
import { finishComponent } from '../../engine/finish/component';
import { componentRecord } from '../../engine/judge/component-record';
import { failure, type Problem, type Result, success } from '../../engine/result';
import { LIGHT_IDS, lightById } from '../../engine/spectrum/lights';
import { parseColorValue, type TypedColor } from '../../io/color-value';
import { parseSpectrumCsv } from '../../io/spectrum-file';
import { readArguments } from '../arguments';
import { colorUnder } from '../color-under';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { readText } from '../read-text';
import { colorText } from '../text/color-text';
import { whitenessOf } from '../whiteness-record';

const OPTIONS = { ...COMMON_OPTIONS, light: { type: 'string' } } as const;

/** `color VALUE`: name, undertone and whiteness of one color, also under another light. */
export const color: Command = {
  name: 'color',
  usage: 'color VALUE [--light ID] [--json]',
  summary:
    'Name, undertone and whiteness of #a1b2c3, lab:L,a,b, munsell:5Y 9/1, "lrv:70 warm gray" or a spectrum file.',
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The color', this.usage);
    if (!given.ok) return given;
    const { subject, values } = given.value;
    const spd = values.light === undefined ? null : lightById(values.light);
    if (values.light !== undefined && !spd) return failure(unknownLight(values.light));

    const typed = readColor(subject);
    if (!typed.ok) return typed;
    const { color, provenance } = typed.value;
    const made = finishComponent({ role: 'base', share: 1, color, finishClass: 'paint', provenance });
    if (!made.ok) return made;
    const component = made.value;
    const record = {
      ...componentRecord(component),
      whiteness: whitenessOf(component.labD65),
      spectrum_source: component.spectrumSource,
      ...(values.light && spd ? { under: colorUnder(component, values.light, spd) } : {}),
    };
    const notices = [...(typed.notices ?? []), ...(made.notices ?? [])];
    return success({ json: record, text: colorText(record), notices });
  },
};

const isFile = (value: string): boolean => /\.(csv|txt|tsv)$/i.test(value) || existsSync(value);

function readColor(value: string): Result<TypedColor> {
  if (!isFile(value)) return parseColorValue(value);
  const text = readText(value);
  if (!text.ok) return text;
  const spectrum = parseSpectrumCsv(text.value, value);
  return spectrum.ok ? success({ color: spectrum.value, provenance: 'measured' }, spectrum.notices) : spectrum;
}

const unknownLight = (id: string): Problem => ({
  code: 'unknown-light',
  text: `There is no light "${id}".`,
  remedy: `Use one of ${LIGHT_IDS.join(', ')}.`,
});
