import { PRICE_AMOUNT } from '../../model/price';
import { NumberField } from '../room/NumberField';
import { PRICE } from '../words/price';
import { CurrencyField } from './CurrencyField';
import { within } from './within';

interface Money {
  readonly amount: number;
  readonly currency?: string;
}

interface PriceFieldsProps<P extends Money> {
  readonly price: P | undefined;
  /** What a first amount is in and for; nothing in particular where it is absent. */
  readonly usual?: P | undefined;
  readonly hint?: string;
  /** `undefined`: none any more. */
  readonly onPrice: (price: P | undefined) => void;
}

/** An amount, and once there is one its currency. */
export function PriceFields<P extends Money>({ price, usual, hint, onPrice }: PriceFieldsProps<P>) {
  return (
    <>
      <NumberField
        label={PRICE.amount}
        value={price?.amount ?? null}
        {...(hint !== undefined && { hint })}
        onValue={(amount) => within(amount, PRICE_AMOUNT, () => onPrice({ ...(price ?? usual), amount } as P))}
        onEmpty={() => within(0, PRICE_AMOUNT, () => onPrice(undefined))}
      />
      {price && (
        <CurrencyField
          currency={price.currency}
          onCurrency={(code) => {
            const { currency: _, ...rest } = price;
            onPrice({ ...rest, ...(code && { currency: code }) } as P);
          }}
        />
      )}
    </>
  );
}
