import type { Specular } from '../engine/finish/given-color';
import { FINISH_CLASSES, type FinishClass } from '../engine/finish/types';
import { failure, type Result, success } from '../engine/result';
import { LIGHT_IDS } from '../engine/spectrum/lights';
import { illuminantId, type SaidBeside } from '../io/color-line';

/** Options of `color` beside those of every command. */
export const COLOR_OPTIONS = {
  illuminant: { type: 'string' },
  observer: { type: 'string' },
  specular: { type: 'string' },
  class: { type: 'string' },
  gloss: { type: 'string' },
  lrv: { type: 'string' },
  light: { type: 'string', multiple: true },
} as const;

type Values = { readonly [O in Exclude<keyof typeof COLOR_OPTIONS, 'light'>]?: string | undefined };

/** What the options say of a color. */
export interface ColorOptions {
  /** Light, observer and mirror reflection, as far as options name them. */
  readonly said: SaidBeside;
  readonly finishClass: FinishClass;
  readonly glossGu?: number;
  readonly lrv?: number;
}

/** Reads the options; a value that cannot be is a problem with what would be right. */
export function readColorOptions(values: Values): Result<ColorOptions> {
  const illuminant = oneOf(
    'illuminant',
    values.illuminant && (illuminantId(values.illuminant) ?? values.illuminant),
    LIGHT_IDS,
  );
  if (!illuminant.ok) return illuminant;
  const observer = oneOf('observer', values.observer?.replace(/(°|º|deg(rees?)?)$/, ''), ['2', '10']);
  if (!observer.ok) return observer;
  const specular = oneOf<Specular>('specular', values.specular?.toLowerCase(), ['included', 'excluded']);
  if (!specular.ok) return specular;
  const finishClass = oneOf('class', values.class?.toLowerCase(), FINISH_CLASSES);
  if (!finishClass.ok) return finishClass;
  const gloss = upTo100('gloss', values.gloss, 'gloss units at 60°');
  if (!gloss.ok) return gloss;
  const lrv = upTo100('lrv', values.lrv, '');
  if (!lrv.ok) return lrv;
  return success({
    said: {
      ...(illuminant.value && { illuminant: illuminant.value }),
      ...(observer.value && { observer_deg: observer.value === '2' ? 2 : 10 }),
      ...(specular.value && { specular: specular.value }),
    },
    finishClass: finishClass.value ?? 'paint',
    ...(gloss.value !== undefined && { glossGu: gloss.value }),
    ...(lrv.value !== undefined && { lrv: lrv.value }),
  });
}

function oneOf<T extends string>(name: string, value: string | undefined, known: readonly T[]): Result<T | undefined> {
  const found = known.find((one) => one === value);
  if (value === undefined || found !== undefined) return success(found);
  return failure({
    code: 'wrong-option',
    text: `--${name} "${value}" is not known.`,
    remedy: `Use one of: ${known.join(', ')}.`,
  });
}

function upTo100(name: string, value: string | undefined, unit: string): Result<number | undefined> {
  if (value === undefined) return success(undefined);
  const number = /^\d+([.,]\d+)?$/.test(value.trim()) ? Number(value.trim().replace(',', '.')) : Number.NaN;
  if (number >= 0 && number <= 100) return success(number);
  return failure({
    code: 'wrong-option',
    text: `--${name} "${value}" is no number from 0 to 100.`,
    remedy: `Give ${unit || 'a number'} from 0 to 100.`,
  });
}
