import { FINISH_CLASSES, type FinishClass, type Provenance } from '../../engine/finish/types';
import { PRICE_UNITS, type PriceUnit } from '../../model/price';
import type { Finish, Supply } from '../../model/project';
import { libraryValues } from '../drawer/library-values';
import { Menu } from '../drawer/Menu';
import { TYPE_IN } from '../words/drawer';
import { CLASS_WORDS } from '../words/finishes';
import { FINISH_FORM } from '../words/libraries';
import { OFF_BY } from '../words/off-by';
import { bandWords, PRICE } from '../words/price';
import { reread, unitNow } from '../words/spoken';
import type { FinishFields } from './finish-fields';
import { OffByMeaning } from './OffByMeaning';
import type { PriceFields } from './price-fields';
import { tagsOf } from './range-filters';

interface FinishFieldsetProps {
  readonly fields: FinishFields;
  /** Offer what was used in the library before. */
  readonly finishes: readonly Finish[];
  /** It has a printed LRV of its own to change. */
  readonly hasOneColor: boolean;
  /** How a screen color or an LRV with a word is known is no choice. */
  readonly isScreen: boolean;
  readonly onFields: (change: Partial<FinishFields>) => void;
}

const CLASSES = reread(() => FINISH_CLASSES.map((one) => [one, CLASS_WORDS[one]] as const));
const PROVENANCES: readonly Provenance[] = ['measured', 'declared', 'photo-with-card', 'photo', 'by-eye', 'screen'];
const BANDS = ['', '$', '$$', '$$$'] as const;
const UNITS = reread(
  () => [['', PRICE.asSold], ...PRICE_UNITS.map((one) => [one, PRICE.units[one]] as const)] as const,
);

/** All fields of a finish but its color. */
export function FinishFieldset({ fields, finishes, hasOneColor, isScreen, onFields }: FinishFieldsetProps) {
  const field = (key: Exclude<keyof FinishFields, 'price'>, label: string, more: FieldMore = {}) =>
    input(key, label, fields[key] ?? '', (value) => onFields({ [key]: value }), more);
  const priceField = (key: keyof PriceFields, label: string, more: FieldMore) =>
    input(key, label, fields.price[key], (value) => setPrice({ [key]: value }), more);
  const setPrice = (change: Partial<PriceFields>) => onFields({ price: { ...fields.price, ...change } });
  const input = (key: string, label: string, value: string, onValue: (value: string) => void, more: FieldMore) => (
    <label className={`field ${more.isWide ? 'field-wide' : ''}`}>
      <span className="label">{label}</span>
      <input
        className="input"
        value={value}
        inputMode={more.isNumber ? 'decimal' : undefined}
        placeholder={more.hint}
        maxLength={more.isWide ? 500 : 80}
        list={more.offers && `offers-${key}`}
        autoComplete="off"
        onChange={(event) => onValue(event.target.value)}
      />
      {more.offers && (
        <datalist id={`offers-${key}`}>
          {more.offers.map((one) => (
            <option key={one} value={one} />
          ))}
        </datalist>
      )}
    </label>
  );
  const distinct = (values: readonly (string | undefined)[]) => [
    ...new Set(values.filter((value) => value !== undefined)),
  ];
  return (
    <div className="finish-fields">
      <fieldset className="finish-set">
        <legend>{FINISH_FORM.what}</legend>
        {field('name', FINISH_FORM.name, { isWide: true })}
        {field('code', FINISH_FORM.code)}
        <Menu<FinishClass>
          label={FINISH_FORM.class}
          value={fields.class}
          choices={CLASSES}
          onChoose={(one) => onFields({ class: one })}
        />
        {field('gloss', FINISH_FORM.gloss, { isNumber: true })}
        {field('thickness', FINISH_FORM.thickness(unitNow()))}
        {hasOneColor && field('lrv', FINISH_FORM.lrv, { isNumber: true, hint: FINISH_FORM.lrvHint })}
        <Menu<Provenance>
          label={FINISH_FORM.provenance}
          value={fields.provenance}
          choices={PROVENANCES.map((one) => [one, TYPE_IN.provenances[one]] as const)}
          isFixed={isScreen}
          onChoose={(provenance) => onFields({ provenance })}
        />
        {field('uncertainty', OFF_BY.label, { isNumber: true, hint: OFF_BY.hint })}
        <OffByMeaning />
      </fieldset>
      <fieldset className="finish-set">
        <legend>{FINISH_FORM.supply}</legend>
        {field('supplier', FINISH_FORM.supplier, { offers: distinct(finishes.map(({ supply }) => supply?.supplier)) })}
        {priceField('amount', PRICE.amount, { isNumber: true })}
        {priceField('currency', PRICE.currency, {
          hint: PRICE.currencyHint,
          offers: distinct(finishes.map(({ supply }) => supply?.price?.currency)),
        })}
        <Menu<PriceUnit | ''>
          label={PRICE.unit}
          value={fields.price.per}
          choices={UNITS}
          onChoose={(per) => setPrice({ per })}
        />
        <Menu<(Supply['price_band'] & string) | ''>
          label={FINISH_FORM.band}
          value={fields.band ?? ''}
          choices={BANDS.map((one) => [one, one === '' ? FINISH_FORM.noBand : bandWords(one)] as const)}
          onChoose={(band) => onFields({ band })}
        />
        {field('availability', FINISH_FORM.availability, { offers: libraryValues(finishes).availabilities })}
        {field('lead', FINISH_FORM.lead, { isNumber: true })}
        {field('unit', FINISH_FORM.unit, { offers: distinct(finishes.map(({ supply }) => supply?.unit)) })}
        {field('pack', FINISH_FORM.pack, { isNumber: true })}
        {field('tags', FINISH_FORM.tags, { isWide: true, offers: tagsOf(finishes) })}
        {field('note', FINISH_FORM.note, { isWide: true })}
      </fieldset>
    </div>
  );
}

interface FieldMore {
  readonly isWide?: boolean;
  readonly isNumber?: boolean;
  readonly hint?: string;
  readonly offers?: readonly string[];
}
