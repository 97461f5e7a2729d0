import { plainWords } from './plain-words';

/** Words that say one thing each; other texts stay as they are. Common practice in five languages, no source. */
const WORDS: readonly (readonly [says: string, pattern: RegExp])[] = [
  [
    'Not in stock',
    /^(?:out of stock|not in stock|sold out|no stock|nicht (?:auf lager|vorratig|vorraetig)|ausverkauft|rupture(?: de stock)?|en rupture(?: de stock)?|epuise|(?:pas|non) en stock|sin (?:stock|existencias)|agotado|non (?:a magazzino|in stock)|esaurito)$/,
  ],
  [
    'In stock',
    /^(?:in stock|on stock|stocked|ex stock|stock|auf lager|ab lager|lagernd|lagerware|lager|vorratig|vorraetig|en stock|stocke|en existencias?|en almacen|in magazzino|a magazzino|pronta consegna)$/,
  ],
  [
    'To order',
    /^(?:to order|on order|order only|special order|auf bestellung|bestellware|bestellbar|sur commande|(?:bajo|por|sobre) pedido|su ordinazione|su ordine)$/,
  ],
  [
    'On request',
    /^(?:on request|upon request|by request|ask|auf anfrage|anfrage|sur demande|nous consulter|(?:a|bajo) consult(?:ar|a)|consultar|su richiesta|a richiesta)$/,
  ],
  [
    'Discontinued',
    /^(?:discontinued|end of line|phased? out|obsolete|auslauf(?:end|artikel|modell|ware)?|ausgelaufen|eingestellt|fin de serie|arrete|discontinue|supprime|descatalogado|discontinuado|fin de serie|fuori produzione|fuori catalogo|dismesso|in esaurimento)$/,
  ],
  [
    'Not available',
    /^(?:not available|unavailable|nicht (?:lieferbar|verfugbar|verfuegbar)|indisponible|non disponible|no disponible|non disponibile)$/,
  ],
  ['Available', /^(?:available|lieferbar|verfugbar|verfuegbar|disponible|disponibile)$/],
];

const YES = /^(?:yes|y|true|ja|j|oui|o|si|s|x|wahr|vrai|verdadero|vero|1)$/;
const NO = /^(?:no|n|false|nein|non|falsch|faux|falso|0)$/;

const OF_STOCK = /stock|lager|vorrat|bestand|existencias|magazzino|giacenza/;

/** How many there are: "12", "12 pcs", "> 50", "1.200". */
const COUNT =
  /^(?:[<>~]|ca|approx)? ?(\d{1,3}(?:[.,' ]\d{3})+|\d+)(?:[.,]\d+)? ?(?:pcs?|pieces?|stk|stuck|stueck|st|uds?|unites?|pz|m2|qm|units?|boxes|\+)?$/i;

/** What a cell says of availability, in one plain word where it is understood: yes and no mean what the heading asks. Else null. */
export function availabilityInCell(cell: string, heading: string): string | null {
  const words = plainWords(cell);
  const found = WORDS.find(([, pattern]) => pattern.test(words))?.[0];
  if (found) return found;
  const asksStock = OF_STOCK.test(plainWords(heading));
  const count = COUNT.exec(cell.trim())?.[1];
  if (count !== undefined && asksStock) return /[1-9]/.test(cell) ? 'In stock' : 'Not in stock';
  if (YES.test(words) || /^[✓✔☑]$/.test(cell.trim())) return asksStock ? 'In stock' : 'Available';
  if (NO.test(words) || /^[✗✘☐]$/.test(cell.trim())) return asksStock ? 'Not in stock' : 'Not available';
  return null;
}
