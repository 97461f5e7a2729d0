import type { Filled } from './fill-run';
import type { Span, Unit, UnitKind } from './types';

/** From here on a unit has two doors, mm (common practice); below this a drawer is no use. */
export const WIDEST_DOOR = 610;
const LEAST_DRAWER = 400;

/** The modules of a filled run as units, and where sink and cooktop are. */
export function standUnits(
  { start, segments, placed }: Filled,
  names: readonly ('sink' | 'cooktop')[],
  ends: { readonly low: boolean; readonly high: boolean; readonly cooktop: UnitKind },
): { readonly units: readonly Unit[]; readonly places: Partial<Record<'sink' | 'cooktop', Span>> } {
  const units: Unit[] = [];
  const places: Partial<Record<'sink' | 'cooktop', Span>> = {};
  let at = start;
  const stand = (kind: UnitKind, width: number, handle: Unit['handle']): Span => {
    const unit = { kind, from: at, to: at + width, handle };
    at += width;
    units.push(unit);
    return { from: unit.from, to: unit.to };
  };
  segments.forEach((segment, i) => {
    const isFirst = i === 0;
    const isLast = i === segments.length - 1;
    // Narrower modules away from sink and cooktop, and from the middle of the run.
    const widths = [...segment].sort((a, b) => (isFirst && !isLast ? a - b : b - a));
    const beforeCooktop = placed[i] && names[placed[i].wish] === 'cooktop';
    const afterCooktop = i > 0 && names[placed[i - 1]!.wish] === 'cooktop';
    widths.forEach((width, n) => {
      const isEnd = (isFirst && n === 0 && ends.low) || (isLast && n === widths.length - 1 && ends.high);
      const besideCooktop = (beforeCooktop && n === widths.length - 1) || (afterCooktop && n === 0);
      const drawers =
        (isEnd && width <= WIDEST_DOOR) || (besideCooktop && widths.length > 1) || (placed.length === 0 && n % 2 === 1);
      stand(
        drawers && width >= LEAST_DRAWER ? 'drawers' : width > WIDEST_DOOR ? 'pair' : 'door',
        width,
        isFirst && !isLast ? 'high' : 'low',
      );
    });
    const one = placed[i];
    if (!one) return;
    const { beside, width } = one;
    if (beside?.side === 'low') stand('dishwasher', beside.width, 'high');
    const name = names[one.wish]!;
    places[name] = stand(name === 'sink' ? 'sink' : ends.cooktop, width, 'high');
    if (beside?.side === 'high') stand('dishwasher', beside.width, 'high');
  });
  return { units, places };
}
