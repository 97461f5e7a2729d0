import { useState } from 'react';
import { PRICE } from '../words/price';
import { TextField } from './TextField';

/** Taken as soon as it has its three letters, or none; till then, or till one leaves it, it shows what is typed. */
export function CurrencyField({
  currency,
  onCurrency,
}: {
  readonly currency: string | undefined;
  readonly onCurrency: (code: string | undefined) => void;
}) {
  const [typed, setTyped] = useState<{ readonly text: string; readonly over: string | undefined } | null>(null);
  return (
    <TextField
      label={PRICE.currency}
      value={typed !== null && typed.over === currency ? typed.text : (currency ?? '')}
      offered={PRICE.currencyHint.split(', ')}
      onText={(text) => {
        const code = text.trim().toUpperCase();
        const isWhole = code === '' || /^[A-Z]{3}$/.test(code);
        setTyped(isWhole ? null : { text: code, over: currency });
        if (isWhole) onCurrency(code || undefined);
      }}
      onLeave={() => setTyped(null)}
    />
  );
}
