import { joined } from '../../engine/judge/surface-words';
import type { SlabMatch } from '../../engine/pattern/types';
import type { CoatedFaces, FloorReach } from '../../model/quantity/assumptions';
import type { Matching, SlabNoun } from '../../model/quantity/slab-types';
import type { Deduction } from '../takeoff/types';

const OFF: { readonly [K in Deduction['kind']]: string } = {
  window: 'windows',
  'glazed-door': 'glazed doors',
  door: 'the door',
  'open-side': 'the open side',
  units: 'what stands behind units',
  'tall-units': 'what stands behind tall units',
  splash: 'what the backsplash covers',
  island: 'the island',
  hood: 'the hood',
};

const FLOOR: { readonly [R in FloorReach]: string } = {
  'under-units': 'Laid under the units as far as the walls.',
  'to-plinth': 'Laid up to the toe kicks, not under the units.',
};

const FACES: { readonly [F in CoatedFaces]: string } = {
  both: 'both faces and edges of doors and drawer fronts, one face of panels',
  front: 'one face of all fronts',
};

/** As the laying calls it. */
const MATCHES: { readonly [M in SlabMatch]: string } = { bookmatch: 'mirrored', slip: 'from the start' };

const MATCHED: { readonly [M in SlabMatch]: string } = {
  bookmatch:
    'At seams veins are mirrored like an open book: order slabs that follow each other in the block, every second one polished on the other face.',
  slip: 'At seams the next slab goes on from its start, all the same way up: order slabs that follow each other in the block.',
};

/** What quantities rest on, in sentences: metric and in US words, to be retold where others are wanted. */
export const RESTS_ON = {
  measuresNothing: 'This measures nothing in the kitchen as it is drawn. Check the kitchen, or lay something else.',
  noPack: (unit: string | undefined) =>
    unit
      ? `"${unit}" does not say how much is in a pack: ask the supplier, then round up.`
      : 'It is not known how it is packed: ask the supplier, then round up.',
  waste: (percent: number, isWet: boolean, isOwn: boolean) =>
    `${number(percent, 1)}% waste for ${isWet ? 'what stays in the container and on tools' : 'cuts and breakage'}${isOwn ? ', as set for this item' : ''}.`,
  spares: (packs: number) => `${packs === 1 ? 'One pack' : `${packs} packs`} kept for repairs.`,
  fronts: ({ doors, drawers }: { readonly doors: number; readonly drawers: number }) =>
    `${plural(doors, 'door')}, ${plural(drawers, 'drawer front')}; panels and fillers in the area. One face.`,
  strip: (m: number) => `${number(m, 2)} m in all.`,
  counted: 'Counted as drawn.',
  gap: 'If it floats, a gap of some 10 mm stays open at all edges: ask its maker.',
  floor: FLOOR,
  deducted: (m2: number, kinds: readonly Deduction['kind'][]) =>
    `${number(m2, 2)} m² taken off for ${joined(kinds.map((kind) => OFF[kind]))}.`,
  tiles: ([a, b]: readonly [number, number], joint: number) =>
    `Pieces of ${number(a)} × ${number(b)} mm with joints of ${number(joint, 1)} mm.`,
  pieces: (count: number) => `About ${plural(Math.ceil(count), 'piece')} before waste.`,
  coat: (m2: number, coats: number, spread: number, of: string) =>
    `${number(m2, 2)} m²${of && ` of ${of}`}, ${plural(coats, 'coat')}, ${number(spread, 1)} m² per liter: the can's own figure decides.`,
  frontCoat: (m2: number, coats: number, spread: number, faces: CoatedFaces) =>
    `${number(m2, 2)} m² of fronts (${FACES[faces]}), ${plural(coats, 'coat')}, ${number(spread, 1)} m² per liter.`,
  grout: (depths: readonly number[], density: number) =>
    `Joints ${depths.length > 0 ? joined(depths.map((mm) => `${number(mm, 1)} mm`)) : 'of no'} deep, ${number(density, 2)} kg per liter.`,
  slab: ([length, width]: readonly [number, number], isUsual: boolean) =>
    `Slabs of ${number(length)} × ${number(width)} mm${isUsual ? ', usual for this material: ask for the real size' : ''}.`,
  panel: ([length, width]: readonly [number, number]) =>
    `Panels of ${number(length)} × ${number(width)} mm, the grain along them.`,
  panelCut: (kerf: number) => `Panels come square, nothing trimmed; saw cuts of ${number(kerf)} mm.`,
  noPanel:
    'How large its panels are is not known: the area alone is no order. Ask the supplier for lengths, widths and thickness of counter panels.',
  cut: (trim: number, kerf: number) => `${number(trim)} mm trimmed all round, saw cuts of ${number(kerf)} mm.`,
  seams: (seams: number, corners: number, noun: SlabNoun) =>
    `${seams === 0 ? 'No seam' : plural(seams, 'seam')} where ${noun}s end${corners > 0 ? `, ${plural(corners, 'joint')} in corners` : ''}.`,
  seamClear: (mm: number) =>
    `Seams keep ${number(mm)} mm or more from cut-outs and cooktop, and off the dishwasher, where they can.`,
  matched: ({ match, slabs, fewest }: Matching) =>
    `${MATCHED[match]}${slabs !== null && slabs > fewest ? ` ${fewest} would do if veins did not have to match.` : ''}`,
  unmatched: ({ match, slabs, fewest }: Matching) =>
    `Veins do not match at every seam (${MATCHES[match]}): no way was found to cut ${plural(fewest, 'slab')} so. ` +
    (slabs === null
      ? 'No number of slabs was found that can: ask the fabricator.'
      : `${plural(slabs, 'slab')} can. Decide which: matching at every seam is set under "What quantities rest on".`),
  yield: (share: number, slabs: number, least: number, noun: SlabNoun) =>
    `${number(100 * share, 1)}% of the ${noun}s is used; ${slabs === least ? 'area alone asks for as many' : `by area alone ${least} would do`}.`,
  edges: (m: number) => `${number(m, 2)} m of finished edge.`,
  cutouts: (holes: number) => `${plural(holes, 'cut-out')}, not taken off.`,
} as const;

const plural = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;

const number = (value: number, digits = 0): string => String(Number(value.toFixed(digits)));
