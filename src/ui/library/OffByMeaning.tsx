import { OFF_BY } from '../words/off-by';

/** What the number means by which a color may be off, for those who ask. */
export const OffByMeaning = () => (
  <details className="off-by small field-wide">
    <summary>{OFF_BY.ask}</summary>
    <p>{OFF_BY.meaning}</p>
  </details>
);
