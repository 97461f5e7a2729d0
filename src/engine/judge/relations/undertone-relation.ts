import { degreesApart } from '../../color/hue-apart';
import { hueDegOf } from '../../color/lab';
import { undertoneOf } from '../../naming/undertone';
import { PAIR } from '../pair';
import type { SampleColor } from '../sample-color';
import { sentenceCase, surfacesPhrase } from '../surface-words';
import type { RelationRule } from './rule';
import { finishesOf, mainColor } from './seen-scheme';
import type { UndertoneSort } from './types';

interface Lean {
  readonly sort: UndertoneSort;
  readonly hue_deg: number | null;
  readonly word: string;
  readonly strength: number;
}

const leans = new WeakMap<SampleColor, Lean>();

/** Plain below the strength that earns a tinted name (ISCC-NBS); a color where the name is no longer one of white, gray, black. */
export function leanOf(color: SampleColor): Lean {
  const known = leans.get(color);
  if (known) return known;
  const { level, word, name, strength } = undertoneOf(color.lab);
  const sort = level === 'color' ? 'color' : level === 'named' ? 'tinted' : 'plain';
  const lean = {
    sort,
    hue_deg: sort === 'plain' ? null : hueDegOf(color.lab),
    word: sort === 'color' ? name : sort === 'tinted' ? word : name,
    strength,
  } as const;
  leans.set(color, lean);
  return lean;
}

const described = (sort: UndertoneSort, word: string, plural: boolean, may: boolean): string => {
  const be = may ? 'may be' : plural ? 'are' : 'is';
  if (sort === 'plain') return `${be} plain, with no lean that has a name (${word})`;
  if (sort === 'tinted') return `${may ? 'may lean' : plural ? 'lean' : 'leans'} ${word}`;
  return `${be} ${word}, a color of ${plural ? 'their' : 'its'} own`;
};

/** Which way the main color of each place leans, and whether that has a name. */
export const undertoneRule: RelationRule<'undertone'> = {
  propose(_, places) {
    return places.map(({ surfaces, seen }) => {
      const { sort, hue_deg, word, strength } = leanOf(mainColor(seen));
      return { claim: { kind: 'undertone', of: surfaces, sort, hue_deg, word } as const, numbers: { strength } };
    });
  },
  read({ of, sort, hue_deg }, scheme, { strength: there }) {
    const all = finishesOf(scheme, of).map((seen) => ({ seen, lean: leanOf(mainColor(seen)) }));
    if (all.length === 0) return null;
    const turned = (lean: Lean) =>
      hue_deg === null || lean.hue_deg === null ? 0 : degreesApart(hue_deg, lean.hue_deg);
    const isAsThere = (lean: Lean) => lean.sort === sort && turned(lean) <= PAIR.echoHueMax;
    const other = all.find(({ lean }) => !isAsThere(lean));
    return {
      holds: !other,
      words() {
        const { lean } = other ?? all[0]!;
        const who = surfacesPhrase(of);
        const here = `Here ${who.text} ${described(lean.sort, lean.word, who.plural, false)}.`;
        const degrees = turned(lean);
        if (degrees > PAIR.echoHueMax) {
          const text = `${degrees.toFixed(0)}° of hue away, ${PAIR.echoHueMax}° would pass`;
          return { here, by: { value: degrees - PAIR.echoHueMax, unit: 'degrees of hue', text } };
        }
        const text = `undertone strength ${lean.strength.toFixed(1)} here, ${(there ?? 0).toFixed(1)} there`;
        return { here, by: { value: Math.abs(lean.strength - (there ?? 0)), unit: 'undertone strength', text } };
      },
    };
  },
  say({ of, sort, word }, _, may) {
    const who = surfacesPhrase(of);
    return `${sentenceCase(who.text)} ${described(sort, word, who.plural, may)}.`;
  },
  open({ of }) {
    const who = surfacesPhrase(of);
    return `Which way ${who.text} ${who.plural ? 'lean' : 'leans'} is too close to call.`;
  },
};
