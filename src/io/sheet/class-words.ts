import { FINISH_CLASSES, type FinishClass } from '../../engine/finish/types';
import { plainWords } from './plain-words';

/**
 * Words for classes of finishes in English, German, French, Spanish and Italian; the first line that fits counts, so that what a thing is
 * made of comes before what it looks like ("wood-look porcelain", "laminate, oak"). A leading * stands for any beginning of a word, a
 * trailing one for any end.
 */
const WORDS: readonly (readonly [FinishClass, string])[] = [
  ['grout', 'grout* *fuge* fugen* jointoiement joint* lechada boquilla stucco fuga'],
  [
    'solid surface',
    'solid_surface solidsurface mineralwerkstoff acrylic_surface acrylstein resine_minerale superficie_solida',
  ],
  [
    'engineered',
    'engineered* quartz *quarz* quarzo cuarzo terrazzo agglomer* aglomerado agglomerato composite_stone sintered* sinter* reconstitu* compac* ' +
      'kunststein quarzkomposit',
  ],
  ['porcelain', 'porcelain* porzellan* feinsteinzeug* gres gres_* porcelan* porcellan* gres_cerame stoneware'],
  ['vinyl', 'vinyl* lvt lvp spc vinilo vinilico vinile vinilic* pvc *vinyl'],
  ['laminate', 'laminat* hpl cpl *schichtstoff* stratifi* laminad* formica* melamin* *laminat laminato stratificat*'],
  ['glass', 'glass *glas verre vidrio vetro *glass glas'],
  [
    'metal',
    'metal* *metall steel stainless* *stahl inox acier acero acciaio brass messing laiton laton ottone copper kupfer cuivre cobre rame ' +
      'alumin* nickel chrom* bronze zink zinc',
  ],
  [
    'glazed',
    'glazed* tile* ceramic* *fliese* keramik* carrelage* faience ceramique* azulejo* ceramica* piastrell* zellige* glasur* maiolica* cotto',
  ],
  [
    'paint',
    'paint paints painted emulsion lacquer* *lack *lacke *lackierung *farbe *farben wandfarbe* anstrich* peinture* laque* pintura* esmalte* vernic* ' +
      'pittur* smalto laccato limewash powder_coat*',
  ],
  [
    'stone',
    'stone* granit* marble marmor marmo marmol marbre limestone* kalkstein calcaire caliza calcare *stein *gestein quartzite* quarzit* slate* ' +
      'schiefer* ardoise pizarra ardesia travertin* soapstone* sandstein* sandstone* gres_naturel pierre* piedra* pietra* basalt* onyx dolomit* ' +
      'granito steatit* naturstein*',
  ],
  [
    'wood',
    'wood* timber hardwood* *holz* bois madera legno oak* *eiche* chene roble rovere walnut* *nussbaum* noyer nogal noce birch* birke* bouleau ' +
      'abedul betulla beech* *buche* hetre haya faggio ash esche* frene fresno frassino maple* ahorn* erable arce acero_legno pine *kiefer* pin ' +
      'pino teak* bamboo* bambus* *furnier* veneer* placage parquet* parkett* plywood sperrholz cherry kirsch* elm ulme cork kork',
  ],
];

const PATTERNS: readonly (readonly [FinishClass, RegExp])[] = WORDS.map(([kind, words]) => {
  const each = words.split(' ').map((word) => word.replaceAll('*', '[a-z]*').replaceAll('_', ' '));
  return [kind, new RegExp(`(?:^| )(?:${each.join('|')})(?= |$)`)];
});

/** Longer cells are no names of classes. */
const MOST_LETTERS = 80;

/** Cells repeat from row to row. */
const known = new Map<string, FinishClass | null>();
const MOST_KNOWN = 1000;

/** The class that words name, null where they name none that is known. */
export function classInWords(cell: string): FinishClass | null {
  const before = known.get(cell);
  if (before !== undefined) return before;
  const words = cell.length > MOST_LETTERS ? '' : plainWords(cell);
  const exact = FINISH_CLASSES.find((one) => one === words);
  const found = exact ?? PATTERNS.find(([, pattern]) => pattern.test(words))?.[0] ?? null;
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(cell, found);
  return found;
}
