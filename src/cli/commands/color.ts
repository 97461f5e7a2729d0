import { existsSync } from 'node:fs';
import { finishComponent } from '../../engine/finish/component';
import type { GivenColor } from '../../engine/finish/given-color';
import { failure, type Problem, type Result, success } from '../../engine/result';
import type { SaidBeside } from '../../io/color-line';
import { parseColorValue, type TypedColor } from '../../io/color-value';
import { parseSpectrumCsv } from '../../io/spectrum-file';
import { readArguments } from '../arguments';
import { COLOR_OPTIONS, readColorOptions } from '../color-options';
import { colorRecord } from '../color-record';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { type NamedLight, readLight } from '../light-option';
import { readText } from '../read-text';
import { colorText } from '../text/color-text';

const OPTIONS = { ...COMMON_OPTIONS, ...COLOR_OPTIONS } as const;

/** `color VALUE`: name, undertone and whiteness of one color, also under other lights. */
export const color: Command = {
  name: 'color',
  usage:
    'color VALUE [--illuminant ID] [--observer 2|10] [--specular included|excluded] [--class CLASS] [--gloss GU] ' +
    '[--lrv NUMBER] [--light LIGHT ...] [--json]',
  summary:
    'Name, undertone and whiteness of "#a1b2c3", "p3:#a1b2c3", lab:L,a,b, lch:L,C,h, xyz:X,Y,Z, "munsell:5Y 9/1", ' +
    '"lrv:70 warm gray" or a spectrum FILE; of a file with several samples "FILE#NAME". Numbers count as D65, 2° unless ' +
    'options or "lab(D50,10):L,a,b" say otherwise; the mirror reflection counts as included.',
  hasNotes: true,
  run(args): Result<Report> {
    const read = readArguments(args, OPTIONS, 'The color', this.usage, 'joined');
    if (!read.ok) return read;
    const { subject, values } = read.value;
    const options = readColorOptions(values);
    if (!options.ok) return options;
    const { said, finishClass, glossGu } = options.value;
    const typed = readColor(subject, said);
    if (!typed.ok) return typed;
    const conflict = conflictOf(typed.value.color, said);
    if (conflict) return failure(conflict);
    const lights = readAllLights(values.light ?? []);
    if (!lights.ok) return lights;

    const { color: given, provenance } = typed.value;
    const lrv = options.value.lrv ?? typed.value.lrv;
    const component = {
      role: 'base',
      share: 1,
      color: given,
      finishClass,
      provenance,
      ...(glossGu !== undefined && { glossGu }),
      ...(lrv !== undefined && { lrv }),
    } as const;
    const made = finishComponent(component);
    if (!made.ok) return made;
    const record = colorRecord(component, made.value, lights.value);
    const notices = [...(typed.notices ?? []), ...(lights.notices ?? []), ...(made.notices ?? [])];
    return success({ json: record, text: colorText(record), notices });
  },
};

const isFile = (value: string): boolean => /\.(csv|txt|tsv)$/i.test(value) || existsSync(value);

/** FILE, or FILE#NAME for one sample of several; nothing where the value is no file. */
function fileAndName(value: string): readonly [file?: string, sample?: string] {
  if (isFile(value)) return [value];
  // Names may hold a #, and a file, too.
  for (let mark = value.indexOf('#'); mark > 0; mark = value.indexOf('#', mark + 1)) {
    if (isFile(value.slice(0, mark))) return [value.slice(0, mark), value.slice(mark + 1)];
  }
  return [];
}

function readColor(value: string, said: SaidBeside): Result<TypedColor> {
  const [file, sample] = fileAndName(value);
  if (file === undefined) return parseColorValue(value, said);
  const text = readText(file);
  if (!text.ok) return text;
  const spectrum = parseSpectrumCsv(text.value, file, sample);
  if (!spectrum.ok) return spectrum;
  const color = { ...spectrum.value, ...(said.specular && { specular: said.specular }) };
  return success({ color, provenance: 'measured' }, spectrum.notices);
}

/** An option that the value contradicts, or that says nothing of its kind. */
function conflictOf(given: GivenColor, said: SaidBeside): Problem | null {
  for (const [option, key] of OPTION_OF) {
    const wanted = said[key];
    if (wanted === undefined) continue;
    const own = (given as { readonly [K in typeof key]?: unknown })[key];
    if (own === wanted) continue;
    return {
      code: 'option-conflict',
      text:
        own === undefined
          ? `--${option} says nothing of a color given as ${KIND_WORDS[given.kind]}.`
          : `The color says ${own}, --${option} says ${wanted}.`,
      remedy: own === undefined ? `Leave out --${option}.` : 'Say it once.',
    };
  }
  return null;
}

const OPTION_OF = [
  ['illuminant', 'illuminant'],
  ['observer', 'observer_deg'],
  ['specular', 'specular'],
] as const;

const KIND_WORDS: { readonly [K in GivenColor['kind']]: string } = {
  lab: 'L*, a*, b*',
  lch: 'L*, C*, h',
  xyz: 'X, Y, Z',
  munsell: 'a Munsell notation',
  spectrum: 'a spectrum',
  hex: 'a screen color',
  lrv: 'an LRV and a word',
};

function readAllLights(words: readonly string[]): Result<readonly NamedLight[]> {
  const lights: NamedLight[] = [];
  const notices: Problem[] = [];
  for (const one of words) {
    const read = readLight(one);
    if (!read.ok) return read;
    lights.push(read.value);
    notices.push(...(read.notices ?? []));
  }
  return success(lights, notices);
}
