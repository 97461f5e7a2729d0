import type { SurfaceId } from '../../engine/surface';
import { COVER } from '../words/handover';
import { type HandoverItem, viewShare } from './handover-items';
import type { HandoverOption, HandoverSet } from './handover-set';
import { PaperSwatch } from './PaperSwatch';

const LIES_FLAT: readonly SurfaceId[] = ['counter', 'island-counter', 'floor', 'sink', 'ceiling'];
const isFlat = ({ surfaces }: HandoverItem): boolean => LIES_FLAT.includes(surfaces[0]!);

/** What fits the narrower of the two papers between its margins, mm. */
const WIDTH_MM = 174;
const HEIGHT_MM = 9;
const LEAST_MM = 5;

/** The finishes in one line: upright ones above it, flat ones below, each as wide as it is seen. */
export function LedgeStrip({ set, of }: { readonly set: HandoverSet; readonly of: HandoverOption }) {
  const items = of.items.filter(({ isGrout }) => !isGrout);
  const row = (wanted: boolean, label: string) => {
    const shown = items.filter((item) => isFlat(item) === wanted);
    const widths = widthsOf(shown.map((item) => viewShare(item, of.day.assessment) ?? 1));
    return (
      <div className="strip-row" role="img" aria-label={label}>
        {shown.map(({ id, finish, laying }, i) => (
          <PaperSwatch key={id} paint={set.paintOf(finish, laying)} width_mm={widths[i]!} height_mm={HEIGHT_MM} />
        ))}
      </div>
    );
  };
  return (
    <div className="strip">
      {row(false, COVER.upright)}
      <div className="strip-edge" />
      {row(true, COVER.flat)}
    </div>
  );
}

/** Shares of the width, none narrower than can be seen. */
function widthsOf(shares: readonly number[]): readonly number[] {
  const sum = shares.reduce((total, share) => total + share, 0) || 1;
  const rest = Math.max(0, WIDTH_MM - LEAST_MM * shares.length);
  return shares.map((share) => LEAST_MM + (rest * share) / sum);
}
