import { differenceCiede2000 } from '../../color/difference';
import type { SurfaceId } from '../../surface';
import { sentenceCase, surfacesPhrase } from '../surface-words';
import { majorColors } from './hues';
import { pairsAmong, placesOf } from './places';
import type { RelationRule } from './rule';
import type { SeenScheme, SeenSurface } from './seen-scheme';

/**
 * When a pattern shows, by the greatest difference between its own colors, CIEDE2000, and when it is strong; how many times
 * larger a figure leads over one as strong. All our judgment, no source.
 */
const PATTERN = { shows: 5, strong: 12, larger: 3 } as const;

interface Ranked {
  readonly surfaces: readonly SurfaceId[];
  readonly contrast: number;
  readonly rank: 0 | 1 | 2;
  readonly scale_mm: number | null;
  /** Its pattern was told, be it none. */
  readonly isKnown: boolean;
}

/** Greatest difference between colors of one surface that are more than lines. */
function contrastOf(seen: SeenSurface): number {
  return Math.max(0, ...pairsAmong(majorColors(seen)).map(([a, b]) => differenceCiede2000(a.lab, b.lab)));
}

/** Of a surface: 0 none that shows, 1 one that shows, 2 a strong one. */
export function patternRank(seen: SeenSurface): 0 | 1 | 2 {
  const contrast = contrastOf(seen);
  return contrast >= PATTERN.strong ? 2 : contrast >= PATTERN.shows ? 1 : 0;
}

function ranked(scheme: SeenScheme): Ranked[] {
  return placesOf(scheme)
    .filter(({ isLarge }) => isLarge)
    .map(({ surfaces, seen }) => {
      const rank = patternRank(seen);
      return {
        surfaces,
        contrast: contrastOf(seen),
        rank,
        scale_mm: seen.pattern?.scale_mm ?? null,
        isKnown: seen.pattern !== null,
      };
    });
}

/** Does the one lead over the other: stronger by a class, or as strong and much larger. */
function leadsOver(one: Ranked, other: Ranked): boolean {
  if (one.rank !== other.rank) return one.rank > other.rank;
  return one.scale_mm !== null && other.scale_mm !== null && one.scale_mm >= PATTERN.larger * other.scale_mm;
}

/** The one that leads over all others; null where nothing shows; undefined where several compete. */
function leaderOf(all: readonly Ranked[]): Ranked | null | undefined {
  if (all.every(({ rank }) => rank === 0)) return null;
  return all.find((one) => one.rank > 0 && all.every((other) => other === one || leadsOver(one, other)));
}

/** Which surface leads the pattern, and that only one does. */
export const patternRule: RelationRule<'pattern'> = {
  propose(scheme) {
    const all = ranked(scheme);
    const leader = all.length > 0 ? leaderOf(all) : undefined;
    // One color each says nothing of patterns: a quiet look has to be known as such.
    if (leader === undefined || (leader === null && !all.every(({ isKnown }) => isKnown))) return [];
    const contrast_de00 = leader?.contrast ?? Math.max(...all.map(({ contrast }) => contrast));
    return [{ claim: { kind: 'pattern', lead: leader?.surfaces ?? null } as const, numbers: { contrast_de00 } }];
  },
  read({ lead }, scheme, { contrast_de00 }) {
    const all = ranked(scheme);
    const meant = all.filter(({ surfaces }) => lead?.some((surface) => surfaces.includes(surface)));
    if (all.length === 0 || (lead && meant.length === 0)) return null;
    const leader = leaderOf(all);
    const holds = lead === null ? leader === null : leader != null && meant.every((one) => one === leader);
    return {
      holds,
      words: () => (lead === null ? quietWords(all) : leadWords(all, meant, leader ?? null, contrast_de00 ?? 0)),
    };
  },
  say({ lead }, { contrast_de00 }, may) {
    if (lead === null) return `No surface ${may ? 'seems to show' : 'shows'} a pattern: all are quiet.`;
    const who = surfacesPhrase(lead);
    const verb = may ? 'may lead' : who.plural ? 'lead' : 'leads';
    return `${sentenceCase(who.text)} ${verb} the pattern, and nothing competes (${(contrast_de00 ?? 0).toFixed(0)} CIEDE2000 within it).`;
  },
  open: () => 'Which surface leads the pattern is too close to call.',
};

const strongest = (all: readonly Ranked[]): Ranked =>
  all.reduce((most, one) => (one.contrast > most.contrast ? one : most));

function quietWords(all: readonly Ranked[]) {
  const most = strongest(all);
  const text = `${most.contrast.toFixed(0)} CIEDE2000 within it, under ${PATTERN.shows} is quiet`;
  const who = surfacesPhrase(most.surfaces);
  const here =
    most.rank === 0 ? 'All are quiet here, too.' : `Here ${who.text} ${who.plural ? 'show' : 'shows'} a pattern.`;
  return { here, by: { value: Math.max(0, most.contrast - PATTERN.shows), unit: 'CIEDE2000', text } };
}

function leadWords(all: readonly Ranked[], meant: readonly Ranked[], leader: Ranked | null, there: number) {
  const own = strongest(meant);
  const who = surfacesPhrase(own.surfaces);
  const rivals = all.filter((one) => !meant.includes(one) && one.rank > 0 && !leadsOver(own, one));
  if (own.rank === 0) {
    const text = `${own.contrast.toFixed(0)} CIEDE2000 within it here, ${there.toFixed(0)} there`;
    const here = leader
      ? `Here ${leads(leader)} the pattern.`
      : `Here ${who.text} ${who.plural ? 'show' : 'shows'} none.`;
    return { here, by: { value: PATTERN.shows - own.contrast, unit: 'CIEDE2000', text } };
  }
  if (rivals.length === 0)
    return {
      here: `So ${who.plural ? 'do' : 'does'} ${who.text} here.`,
      by: { value: 0, unit: 'CIEDE2000', text: '' },
    };
  const rival = strongest(rivals);
  const text = `${rival.contrast.toFixed(0)} CIEDE2000 within ${surfacesPhrase(rival.surfaces).text}, ${own.contrast.toFixed(0)} within ${who.text}`;
  const limit = own.rank === 2 ? PATTERN.strong : PATTERN.shows;
  return {
    here: `Here ${competes(rival)} with it.`,
    by: { value: rival.contrast - limit, unit: 'CIEDE2000', text },
  };
}

const leads = ({ surfaces }: Ranked): string => {
  const { text, plural } = surfacesPhrase(surfaces);
  return `${text} ${plural ? 'lead' : 'leads'}`;
};
const competes = ({ surfaces }: Ranked): string => {
  const { text, plural } = surfacesPhrase(surfaces);
  return `${text} ${plural ? 'compete' : 'competes'}`;
};
