import { BRIEF, PALETTE } from '../words/handover';
import { seenShare } from '../words/numbers';
import type { PagePart } from './blocks';
import { finishName, sheenText } from './finish-words';
import { viewShare } from './handover-items';
import type { HandoverOption, HandoverSet } from './handover-set';
import { PaperSwatch } from './PaperSwatch';
import { downTheRoom } from './room-order';

const FIGURE_WIDTH_MM = 46;
const FIGURE_HEIGHT_MM = 190;
/** As high as the tag beside it. */
const LEAST_MM = 2.6;
const GAP_MM = 0.4;

/** The finishes as bands, each as high as its share of the view, and what they are called. */
export function palettePart(set: HandoverSet, of: HandoverOption): PagePart {
  const items = downTheRoom(of.items);
  const shares = items.map((item) => viewShare(item, of.day.assessment));
  const heights = bandHeights(shares.map((share) => share ?? 1));
  return {
    id: 'palette',
    title: PALETTE.title(of.option.name),
    page: (
      <div className="palette">
        <p>{PALETTE.intro}</p>
        <div className="palette-halves">
          <div className="palette-figure" role="img" aria-label={PALETTE.figure(of.option.name)}>
            {items.map(({ id, finish, laying }, i) => (
              <div key={id} className="palette-band">
                <PaperSwatch paint={set.paintOf(finish, laying)} width_mm={FIGURE_WIDTH_MM} height_mm={heights[i]!} />
                {id}
              </div>
            ))}
          </div>
          <table className="sheet-table palette-list" aria-label={PALETTE.label}>
            <thead>
              <tr>
                <th scope="col">{BRIEF.id}</th>
                <th scope="col">{BRIEF.finish}</th>
                <th scope="col" className="sheet-end">
                  {PALETTE.share}
                </th>
              </tr>
            </thead>
            <tbody>
              {items.map((item, i) => (
                <tr key={item.id}>
                  <th scope="row">{item.id}</th>
                  <td>
                    <span className="palette-name">
                      <PaperSwatch paint={set.paintOf(item.finish, item.laying)} width_mm={7} height_mm={7} />
                      <span>
                        {finishName(item.finish)}
                        <span className="sheet-small">
                          {item.place} · {sheenText(item.finish)}
                        </span>
                      </span>
                    </span>
                  </td>
                  <td className="sheet-end">{shares[i] ? seenShare(shares[i]!) : PALETTE.noShare}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </div>
    ),
  };
}

/** Heights by share, none thinner than can be seen, all together as high as the figure. */
function bandHeights(shares: readonly number[]): readonly number[] {
  const room = FIGURE_HEIGHT_MM - GAP_MM * (shares.length - 1);
  const sum = shares.reduce((total, share) => total + share, 0) || 1;
  const thin = shares.filter((share) => (share / sum) * room < LEAST_MM).length;
  const wide = shares.filter((share) => (share / sum) * room >= LEAST_MM).reduce((total, share) => total + share, 0);
  const left = room - thin * LEAST_MM;
  return shares.map((share) => ((share / sum) * room < LEAST_MM ? LEAST_MM : (left * share) / (wide || 1)));
}
