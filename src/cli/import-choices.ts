import type { Conditions } from '../engine/finish/given-color';
import { FINISH_CLASSES, type FinishClass, type Provenance } from '../engine/finish/types';
import { UNCERTAINTY_DE00 } from '../engine/finish/uncertainty';
import { failure, type Result, success } from '../engine/result';
import { LIGHT_IDS } from '../engine/spectrum/lights';
import { illuminantId } from '../io/color-line';
import { materialKey } from '../io/sheet/material-words';
import { FIELDS, type Field, type ImportChoices } from '../io/sheet/types';

/** Options of `import` as typed. */
interface Typed {
  readonly class?: string | undefined;
  readonly gloss?: string | undefined;
  readonly illuminant?: string | undefined;
  readonly observer?: string | undefined;
  readonly provenance?: string | undefined;
  readonly scale?: string | undefined;
  readonly column?: readonly string[] | undefined;
  readonly 'class-of'?: readonly string[] | undefined;
}

/** What options say of the rows of a file, or which of them is wrong. */
export function importChoices(typed: Typed): Result<ImportChoices> {
  const kind = oneOf('--class', typed.class, FINISH_CLASSES);
  if (!kind.ok) return kind;
  const gloss = glossOf(typed.gloss);
  if (!gloss.ok) return gloss;
  const conditions = conditionsOf(typed.illuminant, typed.observer);
  if (!conditions.ok) return conditions;
  const provenance = oneOf('--provenance', typed.provenance, Object.keys(UNCERTAINTY_DE00) as Provenance[]);
  if (!provenance.ok) return provenance;
  const scale = oneOf('--scale', typed.scale, ['factor', 'percent'] as const);
  if (!scale.ok) return scale;
  const fields = fieldsOf(typed.column ?? []);
  if (!fields.ok) return fields;
  const classes = classesOf(typed['class-of'] ?? []);
  if (!classes.ok) return classes;
  return success({
    ...(classes.value && { classes: classes.value }),
    ...(fields.value && { fields: fields.value }),
    ...(kind.value && { class: kind.value }),
    ...(gloss.value !== null && { gloss_gu: gloss.value }),
    ...(conditions.value && { conditions: conditions.value }),
    ...(provenance.value && { provenance: provenance.value }),
    ...(scale.value && { scale: scale.value }),
  });
}

function oneOf<T extends string>(option: string, typed: string | undefined, known: readonly T[]): Result<T | null> {
  if (typed === undefined) return success(null);
  const found = known.find((one) => one === typed.toLowerCase());
  return found ? success(found) : wrong(`${option} "${typed}" is none.`, `Write one of: ${known.join(', ')}.`);
}

function glossOf(typed: string | undefined): Result<number | null> {
  if (typed === undefined) return success(null);
  const number = typed.trim() === '' ? Number.NaN : Number(typed);
  if (number >= 0 && number <= 1000) return success(number);
  return wrong(`--gloss "${typed}" is no gloss.`, 'Write gloss units at 60°, 0 to 200 (metals up to 1000).');
}

function conditionsOf(illuminant: string | undefined, observer: string | undefined): Result<Conditions | null> {
  if (illuminant === undefined && observer === undefined) return success(null);
  if (illuminant === undefined || observer === undefined) {
    return wrong('--illuminant and --observer go together.', 'Write both, like --illuminant D65 --observer 10.');
  }
  const id = illuminantId(illuminant);
  if (!id)
    return wrong(
      `--illuminant "${illuminant}" is no CIE light that is known here.`,
      `Write one of: ${LIGHT_IDS.join(', ')}.`,
    );
  const degrees = /^(2|10)°?$/.exec(observer)?.[1];
  if (!degrees) return wrong(`--observer "${observer}" is none.`, 'Write 2 or 10.');
  return success({ illuminant: id, observer_deg: degrees === '2' ? 2 : 10 });
}

function fieldsOf(typed: readonly string[]): Result<ImportChoices['fields'] | null> {
  const fields: Record<number, Field | null> = {};
  for (const words of typed) {
    const [, digits, name] = /^(\d{1,4})=(.*)$/.exec(words.trim()) ?? [];
    const field = name === 'none' ? null : (FIELDS.find((one) => one === name) ?? bandOf(name ?? ''));
    if (!digits || Number(digits) < 1 || field === undefined) {
      return wrong(
        `--column "${words}" was not understood.`,
        `Write the number of the column and what it is, like 2=name, 3=nm:400 or 4=none. Known: ${FIELDS.join(', ')}, nm:300 to nm:900.`,
      );
    }
    fields[Number(digits) - 1] = field;
  }
  return success(typed.length > 0 ? fields : null);
}

function classesOf(typed: readonly string[]): Result<ImportChoices['classes'] | null> {
  const classes: Record<string, FinishClass> = {};
  for (const words of typed) {
    const [, word = '', name = ''] = /^(.+)=([^=]+)$/.exec(words) ?? [];
    const kind = oneOf('--class-of', name.trim(), FINISH_CLASSES);
    if (word === '')
      return wrong(`--class-of "${words}" was not understood.`, 'Write it like Feinsteinzeug=porcelain.');
    if (!kind.ok) return kind;
    if (kind.value) classes[materialKey(word)] = kind.value;
  }
  return success(typed.length > 0 ? classes : null);
}

const bandOf = (name: string): Field | undefined =>
  /^nm:[3-8]\d\d(?:\.\d+)?$|^nm:900$/.test(name) ? (name as Field) : undefined;

const wrong = (text: string, remedy: string): Result<never> => failure({ code: 'wrong-arguments', text, remedy });
