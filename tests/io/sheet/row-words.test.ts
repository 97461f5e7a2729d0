import { describe, expect, it } from 'vitest';
import { classInWords } from '../../../src/io/sheet/class-words';
import { meaningOfHeading } from '../../../src/io/sheet/field-of-heading';
import { importOf, remarks } from './sample-files';

const fieldOf = (heading: string) => meaningOfHeading(heading)?.field ?? null;

/** The finish of a row with these cells beside a color. */
function finishOf(headings: string, cells: string) {
  const { kept, refused } = importOf(`L*;a*;b*;${headings}\n50;0;0;${cells}`);
  if (!kept[0]) throw new Error(refused[0]!.problem.text);
  return { finish: kept[0].finish, told: kept[0].notices.map(({ code }) => code) };
}

// Words of the trade and of color reports in five languages: common practice, no source.
it.each([
  ['code', 'Code|Nr.|No|Ref.|ID|SKU|Art.-Nr.|Artikelnummer|Référence|Código|Codice|Farbnummer|#'],
  ['name', 'Name|Colour|color_name|Farbe|Couleur|Nombre|Nome|Bezeichnung'],
  ['class', 'Class|family|Material|Matériau|Materiale|Categoría|Werkstoff'],
  ['lab_l', 'L|L*|Lab L|CIE L*|LAB_L|lightness|L* (D65/10°)|Helligkeit'],
  ['lab_a', 'a*|Lab a|CIE_a|LAB_A'],
  ['lab_b', 'b*|Lab b|LAB_B|b* D65'],
  ['lch_c', 'C*|Chroma|LCH_C|Buntheit'],
  ['lch_h', 'h|h°|Hue angle|LCH h|Bunttonwinkel'],
  ['xyz_x', 'XYZ_X|CIE X'],
  ['hex', 'HEX|Web|hex code|#HEX|HTML'],
  ['rgb_r', 'R|RGB R|Red|sRGB_R|Rouge'],
  ['munsell', 'Munsell|Munsell notation'],
  ['lrv', 'LRV|LRV %|LRV (%)|Light Reflectance Value|Hellbezugswert|HBW|Y|Valeur de réflexion'],
  ['illuminant', 'illuminant|Lichtart|Illuminant/Observer|Normlichtart|Iluminante'],
  ['observer_deg', 'observer|observer_deg|Beobachter|Observateur|Osservatore'],
  ['gloss_60', 'gloss|Gloss 60°|gloss_60|sheen|Glanz|Glanzgrad|GU|Brillance|Brillo|Gloss (GU)'],
  ['price', 'Price|Preis|Prix|Precio|Prezzo|UVP'],
  ['price_band', 'Price band|Preisgruppe|Gamme de prix'],
  ['price_currency', 'Currency|Währung|Devise|Moneda|Valuta'],
  ['thickness_mm', 'Thickness|Thickness (mm)|Stärke|Dicke|Épaisseur|Espesor|Spessore'],
  ['availability', 'Availability|Verfügbarkeit|Verfuegbarkeit|Disponibilité|Stock'],
  ['lead_time_weeks', 'Lead time|Lead time (days)|Lieferzeit|Délai de livraison|Plazo de entrega'],
  ['supplier', 'Supplier|Lieferant|Fournisseur|Proveedor|Fornitore'],
  ['piece_width_mm', 'Size|Format|Width (in)|Breite|Abmessungen|Tile size'],
  ['tags', 'Tags|Keywords|Schlagworte|Mots-clés'],
  ['note', 'Note|Remarks|Bemerkung|Commentaire|Observaciones|Note'],
  ['nm:450', 'spd_450|R450|450nm|nm450|450|SPECTRAL_450|R_450nm'],
])('%s is what is called %s', (field, headings) => {
  for (const heading of headings.split('|')) expect([heading, fieldOf(heading)]).toEqual([heading, field]);
});

it.each(['schema', 'ΔE', 'da*', 'Gloss 85', 'Pallet', '', '4500', '45', 'x'.repeat(80)])(
  '"%s" is no heading that is known',
  (heading) => {
    expect(fieldOf(heading)).toBeNull();
  },
);

// As the trade sorts materials: common practice, no source.
it.each([
  ['paint', 'paint|Wall paint|Wandfarbe|Peinture|Lack|Pintura|Lacquer'],
  ['stone', 'Stone|granite|Marble|Quartzite|Naturstein|Schiefer|Granit|Pietra|Limestone'],
  ['engineered', 'quartz|Engineered stone|Quarzkomposit|Terrazzo|sintered stone'],
  ['solid surface', 'Solid surface|Mineralwerkstoff'],
  ['laminate', 'laminate|HPL|Schichtstoff|Oak laminate|Stratifié'],
  ['wood', 'wood|Oak|Eiche|walnut veneer|Holz|Chêne|Eichenfurnier|Legno'],
  ['vinyl', 'vinyl|LVT|Luxury vinyl tile'],
  ['glazed', 'tile|Ceramic tile|glazed|Fliese|Wandfliesen|Azulejo'],
  ['porcelain', 'porcelain|Feinsteinzeug|wood-look porcelain tile|Gres porcellanato'],
  ['glass', 'glass|Glas|Verre|Milchglas'],
  ['metal', 'metal|Edelstahl|stainless steel|brass|Inox'],
  ['grout', 'grout|Fugenmörtel'],
])('%s is made of %s', (kind, words) => {
  for (const word of words.split('|')) expect([word, classInWords(word)]).toEqual([word, kind]);
});

it.each(['', 'unknown', 'handle', 'paintings on silk', '42', 'Ashford'])('"%s" names no class', (words) => {
  expect(classInWords(words)).toBeNull();
});

describe('what one orders it by', () => {
  it.each([
    ['$', '$|1|low|niedrig|€|basso'],
    ['$$', '$$|2|mid|Mittel|££|medium'],
    ['$$$', '$$$|3|high|hoch|premium|alto'],
  ])('the price band %s', (band, words) => {
    for (const word of words.split('|'))
      expect([word, finishOf('price', word).finish.supply?.price_band]).toEqual([word, band]);
  });

  it.each([
    ['4 weeks', 4],
    ['2-3 Wochen', 3],
    ['10 days', 1.43],
    ['14 Tage', 2],
    ['2 mois', 8.67],
    ['in stock', 0],
    ['5', 5],
    ['1,5', 1.5],
  ])('weeks of "%s"', (cell, weeks) => {
    expect(finishOf('Lead time', cell).finish.supply?.lead_time_weeks).toBe(weeks);
  });

  it('reads days where the heading says so', () => {
    expect(finishOf('lead_time_days', '14').finish.supply?.lead_time_weeks).toBe(2);
  });

  it('keeps supplier, unit, pack, availability and tags', () => {
    const { finish } = finishOf(
      'supplier;unit;pack;availability;tags',
      'Demo;box of 1 m2;12 pcs;on the moon;"warm, new; oak|new"',
    );
    expect(finish.supply).toEqual({ supplier: 'Demo', unit: 'box of 1 m2', pack: 12, availability: 'on the moon' });
    expect(finish.tags).toEqual(['warm', 'new', 'oak']);
  });
});

// As price and stock lists say it in five languages: common practice, no source.
describe('availability', () => {
  it.each([
    ['In stock', 'in stock|auf Lager|Lagerware|en stock|in magazzino|vorrätig'],
    ['Not in stock', 'out of stock|nicht auf Lager|rupture de stock|sin stock|esaurito'],
    ['To order', 'to order|auf Bestellung|sur commande|bajo pedido|su ordinazione'],
    ['On request', 'on request|auf Anfrage|sur demande|a consultar|su richiesta'],
    ['Discontinued', 'discontinued|Auslauf|Auslaufartikel|fin de série|descatalogado|fuori produzione'],
    ['Available', 'available|lieferbar|disponible|disponibile|yes|ja|oui|sí|sì|x|✓'],
    ['Not available', 'not available|nicht lieferbar|indisponible|no disponible|no|nein|non'],
    ['Ships from the quarry in spring', 'Ships from the quarry in spring'],
    ['One region only', 'One region only'],
  ])('%s is one word', (says, cells) => {
    for (const cell of cells.split('|'))
      expect([cell, finishOf('Verfügbarkeit', cell).finish.supply?.availability]).toEqual([cell, says]);
  });

  it.each([
    ['In stock', 'In stock|Lagerbestand|En stock|Stock', 'yes|ja|oui|sí|12|1.200|> 50|12 Stk|3 pcs'],
    ['Not in stock', 'In stock|Lagerbestand|Stock', 'no|nein|non|0|0 pcs'],
  ])('%s is what yes, no and numbers mean under a heading of stock', (says, headings, cells) => {
    for (const heading of headings.split('|'))
      for (const cell of cells.split('|'))
        expect([heading, cell, finishOf(heading, cell).finish.supply?.availability]).toEqual([heading, cell, says]);
  });

  it('a number under another heading stays what it is', () => {
    expect(finishOf('availability', '12').finish.supply?.availability).toBe('12');
  });
});

// An inch is 25.4 mm (international yard and pound agreement, 1959).
describe('thickness', () => {
  it.each([
    ['thickness', '9', 9],
    ['thickness', '9 mm', 9],
    ['Stärke', '20 mm', 20],
    ['Stärke (cm)', '2', 20],
    ['Dicke', '1,2 cm', 12],
    ['thickness (in)', '3/8', 9.525],
    ['Thickness', '1 1/4 in', 31.75],
    ['épaisseur', '0,8 mm', 0.8],
    ['size', '300 x 600 x 9 mm', 9],
    ['size', '60 x 60 x 2 cm', 20],
    ['size', '12 x 24 x 3/8 in', 9.525],
    ['size', '12 in x 24 in x 9 mm', 9],
    ['Format', '300x600x10', 10],
    ['slab size', '3200 x 1600 x 20 mm', 20],
    ['size;thickness', '300 x 600 x 9 mm;10 mm', 10],
  ])('%s of "%s"', (headings, cells, thickness_mm) => {
    expect(finishOf(headings, cells)).toMatchObject({ finish: { thickness_mm }, told: ['code-missing'] });
  });

  it.each([
    ['thickness', '2/3 cm'],
    ['thickness', 'thick'],
    ['thickness', '900 mm'],
    ['thickness', '0'],
    ['size', '300 x 600 x 900 mm'],
  ])('%s "%s" is left out and told', (headings, cell) => {
    const { finish, told } = finishOf(headings, cell);
    expect([finish.thickness_mm, told]).toEqual([undefined, ['cell-left-out', 'code-missing']]);
  });
});

describe('sizes', () => {
  // An inch is 25.4 mm, a foot 304.8 mm (international yard and pound agreement, 1959).
  it.each([
    ['size', '300 x 600 mm', [300, 600]],
    ['size', '12x24 in', [304.8, 609.6]],
    ['size', '12" x 24"', [304.8, 609.6]],
    ['size', '7 1/2 x 48 in', [190.5, 1219.2]],
    ['size', '30×60 cm', [300, 600]],
    ['size', '600 x 600', [600, 600]],
    ['size (cm)', '30x60', [300, 600]],
    ['size', '300 x 600 x 9 mm', [300, 600]],
    ['width (in);length (in)', '3;12', [76.2, 304.8]],
    ['width;length', '120;1200', [120, 1200]],
    ['width;length', '12 cm;1,2 m', [120, 1200]],
  ])('%s of "%s"', (headings, cells, piece_mm) => {
    expect(finishOf(headings, cells.replaceAll('"', '″')).finish.piece_mm).toEqual(piece_mm);
  });

  it.each(['12x24', 'large', '1 x 1 mm', '0x0', '30'])('"%s" is left out and told', (cell) => {
    const { finish, told } = finishOf('size', cell);
    expect([finish.piece_mm, told]).toEqual([undefined, ['cell-left-out', 'code-missing']]);
  });
});

describe('gloss', () => {
  it('is read with its unit, or from a word, which is told', () => {
    expect(finishOf('gloss', '25 GU').finish.gloss_gu).toBe(25);
    expect(finishOf('sheen', 'Seidenmatt')).toMatchObject({
      finish: { gloss_gu: 28 },
      told: ['gloss-from-word', 'code-missing'],
    });
    expect(finishOf('Glanz', 'hochglänzend').finish.gloss_gu).toBe(78);
    expect(() => finishOf('gloss', 'shiny-ish')).toThrow(/neither a number nor a word/);
    expect(() => finishOf('gloss', '240')).toThrow(/outside 0 to 200/);
  });
});

it('takes the gloss usual for each class where none is given, and offers that of each where they differ', () => {
  const rows = ['1;paint;10', '2;paint;10', '3;wood;', '4;stone;', '5;wood;'];
  const { kept, questions } = importOf(`code;class;gloss;hex\n${rows.map((row) => `${row};#777777`).join('\n')}`, {});
  expect(kept.map(({ finish }) => finish.gloss_gu)).toEqual([10, 10, 15, 10, 15]);
  expect(questions).toEqual([{ about: 'gloss', rows: 3, usual: { gloss_gu: 'usual' } }]);
  const answered = importOf(`code;class;gloss;hex\n${rows.map((row) => `${row};#777777`).join('\n')}`, {
    gloss_gu: 'usual',
  });
  expect(answered.kept.map(({ finish }) => finish.gloss_gu)).toEqual([10, 10, 15, 10, 15]);
  expect(answered.questions).toEqual([]);
});

describe('texts', () => {
  const cells = (code: string, name: string) =>
    importOf(`code\tname\thex\n${code}\t${name}\t#777777`, { class: 'paint', gloss_gu: 5 });

  it('that begin as formulas do are kept as they stand, and told', () => {
    for (const text of ['=1+1', '+49', '-oak', '@home', "=cmd|' /C calc'!A0"]) {
      const found = cells('A-1', text);
      expect(found.kept[0]!.finish.label).toBe(`${text}, A-1`);
      expect(remarks(found)['A-1']).toContain('formula-as-text');
    }
    expect(cells('A-1', "'=1+1").kept[0]!.finish.label).toBe('=1+1, A-1');
    expect(cells('=A1', 'Oat').kept[0]!.finish).toMatchObject({ id: 'A1', supply: { code: '=A1' } });
  });

  it('lose what cannot be seen and what turns the order of letters', () => {
    const found = cells('A-1', 'Oat\u202e\u0007 Lin\u200ben\u2066');
    expect([found.kept[0]!.finish.label, remarks(found)['A-1']]).toEqual([
      'Oat Linen, A-1',
      ['unseen-characters', 'screen-color'],
    ]);
  });

  it('make ids that stand once', () => {
    const { kept, refused } = importOf('code,hex\nA 1,#777777\nA-1,#777777\nNONE,#777777\n,#777777\nA 1,#777777', {
      class: 'paint',
      gloss_gu: 5,
    });
    expect(kept.map(({ finish }) => finish.id)).toEqual(['A-1', 'A-1-2', 'NONE-1', 'ROW-4']);
    expect(refused.map(({ problem }) => problem.text)).toEqual([
      '"A 1" stands in line 2 and again in line 6; the first was taken.',
    ]);
  });
});
