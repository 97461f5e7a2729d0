import { ArrowUp, X } from 'lucide-react';
import { useRef, useState } from 'react';
import type { FinishClass } from '../../engine/finish/types';
import type { Wish } from '../../engine/judge/shortlist/wish';
import type { SurfaceId } from '../../engine/surface';
import type { Finish } from '../../model/project';
import { SHEENS, type SheenId } from '../../model/sheens';
import { surfaceName, wishWords } from '../words/engine-words';
import { CLASS_WORDS, sheenChoice } from '../words/finishes';
import { bandWords } from '../words/price';
import { SHORTLIST } from '../words/shortlist';
import { lrvRange } from './finish-filters';
import { libraryValues } from './library-values';
import { Menu } from './Menu';
import { NumberText } from './NumberText';
import { withEarlier, withWish } from './wish-list';

export interface WishFieldsProps {
  readonly finishes: readonly Finish[];
  /** Surfaces that a wish may name: what lies there does not change with this one. */
  readonly others: readonly SurfaceId[];
  readonly wishes: readonly Wish[];
  readonly onWishes: (wishes: readonly Wish[]) => void;
}

type Kind = Wish['kind'];

/** What one would like of a finish: put together in one row, and listed below in the order in which it counts. */
export function WishFields({ finishes, others, wishes, onWishes }: WishFieldsProps) {
  const form = useRef<HTMLFormElement>(null);
  const [kind, setKind] = useState<Kind>('pattern');
  const [value, setValue] = useState('');
  const [range, setRange] = useState({ from: '', to: '' });
  const choices = valuesOf(kind, finishes, others);
  const chosen = choices.find(([id]) => id === value)?.[0] ?? choices[0]?.[0] ?? null;
  const wish = kind === 'lrv' ? lrvWish(range.from, range.to) : chosen === null ? null : wishOf(kind, chosen);
  const kinds = KINDS.filter((one) => one === 'lrv' || valuesOf(one, finishes, others).length > 0);
  return (
    <div className="library-fold">
      <div className="wish-fields">
        <form
          ref={form}
          className="fold-fields"
          onSubmit={(event) => {
            event.preventDefault();
            if (wish) onWishes(withWish(wishes, wish));
          }}
        >
          <Menu<Kind>
            label={SHORTLIST.wishFor}
            value={kind}
            choices={kinds.map((one) => [one, SHORTLIST.wishKinds[one]] as const)}
            onChoose={setKind}
          />
          {kind === 'lrv' ? (
            <div className="filter-range">
              <NumberText
                label={SHORTLIST.lrvFrom}
                value={range.from}
                onChange={(from) => setRange({ ...range, from })}
              />
              <NumberText label={SHORTLIST.lrvTo} value={range.to} onChange={(to) => setRange({ ...range, to })} />
            </div>
          ) : (
            <Menu<string> label={SHORTLIST.wishValue} value={chosen ?? ''} choices={choices} onChoose={setValue} />
          )}
          <button type="submit" className="button button-outlined fold-button" disabled={wish === null}>
            {SHORTLIST.addWish}
          </button>
        </form>
        {wishes.length > 0 && (
          <ol className="wish-list" aria-label={SHORTLIST.wishes}>
            {wishes.map((one, i) => (
              <li key={wishWords(one)} className="wish small">
                <span>
                  {i + 1}. {wishWords(one)}
                </span>
                {i > 0 && (
                  <button
                    type="button"
                    className="button wish-button"
                    aria-label={SHORTLIST.earlier(wishWords(one))}
                    title={SHORTLIST.earlier(wishWords(one))}
                    onClick={() => {
                      onWishes(withEarlier(wishes, i));
                      // The first has no such button.
                      if (i === 1) form.current?.querySelector('select')?.focus();
                    }}
                  >
                    <ArrowUp className="icon" aria-hidden="true" />
                  </button>
                )}
                <button
                  type="button"
                  className="button wish-button"
                  aria-label={SHORTLIST.dropWish(wishWords(one))}
                  title={SHORTLIST.dropWish(wishWords(one))}
                  onClick={() => {
                    onWishes(wishes.filter((other) => other !== one));
                    form.current?.querySelector('select')?.focus();
                  }}
                >
                  <X className="icon" aria-hidden="true" />
                </button>
              </li>
            ))}
          </ol>
        )}
      </div>
      <p className="small quiet">{SHORTLIST.wishRule}</p>
    </div>
  );
}

const KINDS: readonly Kind[] = [
  'pattern',
  'lrv',
  'no-lighter-than',
  'no-darker-than',
  'class',
  'sheen',
  'price',
  'availability',
];

type Choice = readonly [id: string, words: string];

/** What there is to wish of a kind; a range has no list. */
function valuesOf(kind: Kind, finishes: readonly Finish[], others: readonly SurfaceId[]): readonly Choice[] {
  const { classes, prices, availabilities } = libraryValues(finishes);
  const plain = (one: string): Choice => [one, one];
  switch (kind) {
    case 'pattern':
      return [
        ['quiet', SHORTLIST.patterns.quiet],
        ['lively', SHORTLIST.patterns.lively],
      ];
    case 'class':
      return classes.map((one) => [one, CLASS_WORDS[one]]);
    case 'sheen':
      return SHEENS.map((one) => [one.id, sheenChoice(one)]);
    case 'price':
      return prices.map((one) => [one, bandWords(one)]);
    case 'availability':
      return availabilities.map(plain);
    case 'no-lighter-than':
    case 'no-darker-than':
      return others.map((surface) => [surface, surfaceName(surface)]);
    case 'lrv':
      return [];
  }
}

/** The wish of a value from the list of its kind. */
function wishOf(kind: Exclude<Kind, 'lrv'>, value: string): Wish {
  switch (kind) {
    case 'pattern':
      return { kind, pattern: value as 'quiet' | 'lively' };
    case 'class':
      return { kind, class: value as FinishClass };
    case 'sheen': {
      const { from, to } = SHEENS.find(({ id }) => id === (value as SheenId))!;
      return { kind, from, to };
    }
    case 'price':
      return { kind, bands: [value] };
    case 'availability':
      return { kind, words: value };
    case 'no-lighter-than':
    case 'no-darker-than':
      return { kind, surface: value as SurfaceId };
  }
}

/** Null while nothing is asked for, or the bounds are turned round. */
function lrvWish(fromText: string, toText: string): Wish | null {
  const { from, to } = lrvRange(fromText, toText);
  return from > to || (from === 0 && to === 100) ? null : { kind: 'lrv', from, to };
}
