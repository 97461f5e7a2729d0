import type { Field } from './types';

/**
 * What headings of columns mean, in English, German, French, Spanish and Italian: lower case, without accents, spaces and marks. Where
 * several columns of a sheet fit one field, the word that stands first here counts.
 */
export const HEADING_WORDS: Readonly<Partial<Record<Field, string>>> = {
  code:
    'code sku articleno articlenumber artikelnummer artikelnr artnr itemcode itemno itemnumber productcode productno colorcode colourcode ' +
    'colornumber colournumber farbcode farbnummer farbnr farbtonnummer farbtonnr codecouleur codigo codice referencecode reference ' +
    'referenz referencia riferimento ref refno bestellnummer bestellnr partnumber partno sampleid sampleno probennummer number ' +
    'nummer numero num no nr nº id key article artikel articulo articolo item',
  name:
    'name colorname colourname farbname farbtonname nomcouleur nomdecouleur nombrecolor nombredelcolor nomecolore samplename productname ' +
    'produktname title titel bezeichnung designation denominacion denominazione nom nombre nome label color colour farbe farbton couleur ' +
    'colore teinte product produkt produit producto prodotto sample probe decor dekor',
  class:
    'class klasse classe clase family familie famille familia famiglia material materialart materiau materiale werkstoff category ' +
    'kategorie categorie categoria producttype type typ tipo kind art group gruppe groupe grupo gruppo',
  lab_l: 'labl ciel cielabl lstar l lightness helligkeit clarte luminosidad luminosita chiarezza',
  lab_a: 'laba ciea cielaba astar a',
  lab_b: 'labb cieb cielabb bstar b',
  lch_l: 'lchl cielchl',
  lch_c: 'lchc ciec cielchc cstar cab c chroma buntheit croma',
  lch_h: 'lchh cieh cielchh hab hdeg h hue hueangle bunttonwinkel farbtonwinkel angledeteinte',
  xyz_x: 'xyzx ciex ciexyzx tristimulusx x',
  xyz_y: 'xyzy ciey ciexyzy tristimulusy',
  xyz_z: 'xyzz ciez ciexyzz tristimulusz z',
  xyy_x: 'xyyx chromaticityx ciechromaticityx',
  xyy_y: 'xyyy chromaticityy ciechromaticityy',
  xyy_lum: 'xyycapy xyylum luminancefactor',
  hex: 'hex hexcode hexvalue hexwert hexcolor hexcolour srgbhex rgbhex hexrgb htmlcode html webcode webcolor webcolour web hexadecimal',
  rgb_r: 'rgbr srgbr r red rot rouge rojo rosso',
  rgb_g: 'rgbg srgbg g green grun gruen vert verde',
  rgb_b: 'rgbb srgbb blue blau bleu azul blu',
  munsell: 'munsell munsellnotation munsellcode',
  lrv:
    'lrv lrvy lightreflectancevalue lightreflectance luminousreflectance hellbezugswert hbw hellbezugswerthbw ' +
    'indicedereflexionlumineuse valeurdereflexiondelalumiere valeurdereflexion vrl ilr indicedereflexiondelaluz ' +
    'valordereflectanciadelaluz valordereflexiondelaluz valordereflectancia valorediriflessionedellaluce valorediriflessione ' +
    'indicediriflessione y',
  illuminant:
    'illuminant illuminantobserver lightobserver lightandobserver illuminantandobserver lichtart lichtartbeobachter normlichtart illuminantcie ' +
    'illuminante iluminante iluminanteobservador illuminanteosservatore illuminantobservateur light lightsource conditions condition ' +
    'messbedingung messbedingungen weightingfunction',
  observer_deg:
    'observerdeg observer observerangle standardobserver beobachter normalbeobachter beobachterwinkel observateur observador osservatore',
  specular:
    'specular specularcomponent scisce sciorsce glanzeinschluss componentespeculaire componenteespecular componentespeculare',
  gloss_60:
    'gloss60 gloss60deg gloss60gu gloss60degrees gloss glossgu glossunits glosslevel gu gu60 60gloss 60degloss sheen sheenlevel glanz60 glanz ' +
    'glanzgrad glanzgrad60 glanzeinheiten glanzwert brillance brillant brillance60 brillo brillo60 brillantezza lucentezza',
  texture: 'texture pattern textur struktur muster motif textura patron struttura trama surfacetexture',
  variation:
    'variation shadevariation variationclass vclass vrating farbspiel denuancement destonificacion stonalizzazione',
  provenance: 'provenance howknown method methode metodo metodologia',
  uncertainty_de00: 'uncertaintyde00 uncertainty unsicherheit incertitude incertidumbre incertezza de00',
  piece_width_mm:
    'piecewidthmm piecewidth tilewidth boardwidth width breite largeur ancho anchura larghezza size piecesize tilesize format formato ' +
    'dimensions dimension abmessungen abmessung masse mase grosse groesse taille dimensioni dimensiones medidas misure tamano tamanio',
  piece_length_mm:
    'piecelengthmm piecelength tilelength boardlength length lange laenge longueur largo longitud lunghezza height hohe hoehe hauteur alto altezza',
  slab_length_mm: 'slablengthmm slablength slabsize plattenlange plattenlaenge',
  slab_width_mm: 'slabwidthmm slabwidth plattenbreite',
  thickness_mm:
    'thicknessmm thickness thick starke staerke dicke materialstarke materialdicke plattenstarke epaisseur espesor grosor spessore',
  order_code: 'ordercode orderno ordernumber ordernr',
  supplier:
    'supplier lieferant fournisseur proveedor fornitore vendor manufacturer hersteller fabricant fabricante produttore producer maker brand ' +
    'marke marque marca',
  unit: 'unit soldby soldas salesunit uom einheit verkaufseinheit mengeneinheit unite unidad unita gebinde',
  pack: 'pack packsize packquantity qtyperpack inhalt packung packungsgrosse packungsgroesse contents conditionnement colisage paquete contenido confezione contenuto',
  lead_time_weeks:
    'leadtimeweeks leadtime leadtimedays deliverytime delivery lieferzeit lieferfrist delaidelivraison delai plazodeentrega plazo tempodiconsegna ' +
    'tempiconsegna consegna',
  price_currency: 'pricecurrency currency wahrung waehrung devise monnaie moneda divisa valuta',
  price_per: 'priceper priceunit pricingunit preiseinheit preisje unitedeprix unidaddeprecio unitadiprezzo',
  price_band:
    'priceband pricegroup pricerange pricelevel priceclass pricetier pricecategory preisgruppe preisklasse preisniveau preisstufe gammedeprix ' +
    'niveaudeprix classedeprix gamadeprecios niveldeprecio grupodeprecio fasciadiprezzo',
  availability:
    'availability available verfugbarkeit verfuegbarkeit lieferbarkeit lieferbar disponibilite disponible disponibilidad disponibilita ' +
    'disponibile stock stockstatus stocklevel instock lagerbestand lager auflager bestand vorrat enstock existencias giacenza magazzino',
  tags: 'tags tag keywords schlagworte schlagworter stichworte motscles etiquettes etiquetas etichette collection kollektion coleccion collezione',
  note:
    'note notes remark remarks comment comments bemerkung bemerkungen kommentar anmerkung notiz hinweis remarque remarques commentaire ' +
    'nota notas observaciones comentario comentarios osservazioni commento description beschreibung descripcion descrizione',
  source: 'source datasource quelle datenquelle fuente fonte sourcededonnees',
};
