/*
 * The trade's words on two sides of the Atlantic. Sources: terms of the kitchen trade as in manufacturers' and planning guides of both
 * countries; spellings by the Merriam-Webster and Oxford dictionaries (-ise where Oxford has both, as most people write it).
 */

/**
 * US before UK, in small letters, without endings. A longer term stands before a shorter one within it. `s`: with a plural in -s of
 * both; spaces in a US term may be hyphens, which stay.
 */
export const TERMS: readonly (readonly [us: string, uk: string])[] = [
  ['countertop', 'worktop'],
  ['counter', 'worktop'],
  ['backsplash', 'splashback'],
  ['cooktop', 'hob'],
  ['toe kick', 'plinth'],
  ['upper cabinet', 'wall unit'],
  ['wall cabinet', 'wall unit'],
  ['base cabinet', 'base unit'],
  ['tall cabinet', 'tall unit'],
  ['pantry', 'larder'],
  ['range hood', 'cooker hood'],
  ['hood', 'cooker hood'],
  ['faucet', 'tap'],
  ['baseboard', 'skirting'],
  ['light rail', 'pelmet'],
  ['receptacle', 'socket'],
  ['latex paint', 'emulsion'],
  ['under cabinet', 'under cupboard'],
  ['trim', 'woodwork'],
  ['drywall', 'plasterboard'],
  ['local code', 'building regulation'],
  ['licensed trade', 'qualified and registered trade'],
];

/** Verbs in -ize, which most people in the UK write with an s. */
const IZE: readonly string[] = (
  'recogn real organ standard normal minim maxim optim summar emphas custom neutral equal final harmon polar categor memor ' +
  'general special apolog priorit visual util author character'
).split(' ');

/** Spellings: what a word begins with, or is with its endings. */
export const SPELLINGS: readonly (readonly [us: string, uk: string])[] = [
  ['color', 'colour'],
  ['discolor', 'discolour'],
  ['neighbor', 'neighbour'],
  ['favor', 'favour'],
  ['odor', 'odour'],
  ['vapor', 'vapour'],
  ['harbor', 'harbour'],
  ['honor', 'honour'],
  ['plow', 'plough'],
  ['sulfur', 'sulphur'],
  ['behavior', 'behaviour'],
  ['gray', 'grey'],
  ['center', 'centre'],
  ['centered', 'centred'],
  ['centering', 'centring'],
  ['millimeter', 'millimetre'],
  ['centimeter', 'centimetre'],
  ['meter', 'metre'],
  ['liter', 'litre'],
  ['matte', 'matt'],
  ['mold', 'mould'],
  ['mitered', 'mitred'],
  ['aluminum', 'aluminium'],
  ['judgment', 'judgement'],
  ['modeled', 'modelled'],
  ['modeling', 'modelling'],
  ['labeled', 'labelled'],
  ['labeling', 'labelling'],
  ['canceled', 'cancelled'],
  ['leveled', 'levelled'],
  ['leveling', 'levelling'],
  ['luster', 'lustre'],
  ['fiber', 'fibre'],
  ['catalog', 'catalogue'],
  ['analyze', 'analyse'],
  ['analyzed', 'analysed'],
  ...IZE.flatMap((stem) =>
    ['e', 'es', 'ed', 'ing', 'er', 'ation'].map((end) => [`${stem}iz${end}`, `${stem}is${end}`] as const),
  ),
];

/** Endings a spelling takes unchanged. */
export const ENDINGS = 's|ed|ing|less|ful|ish|er|est|ness|ers|able|ably|ings|ation|y';

/** Plurals that do not end alike. */
export const PLURALS: Readonly<Record<string, string>> = {
  backsplashes: 'splashbacks',
  pantries: 'larders',
  emulsions: 'emulsions',
};

/** Other words of the trade that mean as good as the same to one who looks for something. */
export const SAME: readonly (readonly string[])[] = [
  ['baseboard', 'skirting', 'trim', 'woodwork', 'molding', 'moulding'],
  ['cooktop', 'hob', 'stovetop'],
  ['hardware', 'handle', 'knob'],
  ['latex paint', 'emulsion'],
  ['cabinet', 'unit', 'cupboard'],
];
