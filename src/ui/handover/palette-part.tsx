import { BRIEF, PALETTE } from '../words/handover';
import { seenShare } from '../words/numbers';
import type { FlowPart } from './blocks';
import { finishName, sheenText } from './finish-words';
import { viewShare } from './handover-items';
import type { HandoverOption, HandoverSet } from './handover-set';
import { PaperSwatch } from './PaperSwatch';
import { downTheRoom } from './room-order';

const FIGURE_WIDTH_MM = 46;
const FIGURE_HEIGHT_MM = 205;
/** As high as the tag beside it. */
const LEAST_MM = 2.6;
const GAP_MM = 0.4;

/** The finishes as bands, each as high as its share of the view, and what they are called. */
export function palettePart(set: HandoverSet, of: HandoverOption): FlowPart {
  const items = downTheRoom(of.items);
  const shares = items.map((item) => viewShare(item, of.day.assessment ?? of.evening.assessment));
  const heights = bandHeights(shares.map((share) => share ?? 1));
  return {
    id: 'palette',
    title: PALETTE.title(of.option.name),
    aside: (
      <div className="palette-figure" role="img" aria-label={PALETTE.figure(of.option.name)}>
        {items.map(({ id, finish, laying }, i) => (
          <div key={id} className="palette-band">
            <PaperSwatch paint={set.paintOf(finish, laying)} width_mm={FIGURE_WIDTH_MM} height_mm={heights[i]!} />
            {id}
          </div>
        ))}
      </div>
    ),
    blocks: [
      { kind: 'flow', key: 'intro', keeps: true, node: <p>{PALETTE.intro}</p> },
      {
        kind: 'table',
        key: 'finishes',
        label: PALETTE.label,
        columns: [
          { head: BRIEF.id, width: 1.3 },
          { head: BRIEF.finish, width: 7 },
          { head: PALETTE.share, width: 1.8, align: 'end' },
        ],
        rows: items.map(({ id, place, finish, laying }, i) => ({
          key: id,
          cells: [
            id,
            <span key="finish" className="palette-name">
              <PaperSwatch paint={set.paintOf(finish, laying)} width_mm={7} height_mm={7} />
              <span>
                {finishName(finish)}
                <span className="sheet-small">
                  {place} · {sheenText(finish)}
                </span>
              </span>
            </span>,
            shares[i] ? seenShare(shares[i]!) : PALETTE.noShare,
          ],
        })),
      },
    ],
  };
}

/** Heights by share, none thinner than can be seen, all together as high as the figure. */
function bandHeights(shares: readonly number[]): readonly number[] {
  const room = FIGURE_HEIGHT_MM - GAP_MM * (shares.length - 1);
  const sum = shares.reduce((total, share) => total + share, 0) || 1;
  const isThin = (share: number) => (share / sum) * room < LEAST_MM;
  const wide = shares.filter((share) => !isThin(share)).reduce((total, share) => total + share, 0) || 1;
  const left = room - shares.filter(isThin).length * LEAST_MM;
  return shares.map((share) => (isThin(share) ? LEAST_MM : (left * share) / wide));
}
