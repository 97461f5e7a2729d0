import { BOARD } from '../words/handover';
import type { PagePart } from './blocks';
import { type BoardTier, boardTiers } from './board-layout';
import { boardRows } from './board-rows';
import { finishName, sheenWord } from './finish-words';
import { type HandoverItem, viewShare } from './handover-items';
import type { HandoverOption, HandoverSet } from './handover-set';
import { PaperSwatch } from './PaperSwatch';
import type { Paper } from './Sheets';

/** Inside of the board on either paper, mm. */
const BOARD_MM: { readonly [P in Paper]: { readonly width: number; readonly height: number } } = {
  a4: { width: 162, height: 213 },
  letter: { width: 168, height: 196 },
};

/** Where nobody has read the room, all are alike. */
const UNKNOWN_SHARE = 0.1;

/** The finishes as pieces on a gray board, as they stand in the room. */
export function boardPart(set: HandoverSet, of: HandoverOption, paper: Paper): PagePart {
  const shareOf = (item: HandoverItem) => viewShare(item, of.day.assessment) ?? UNKNOWN_SHARE;
  const tiers = boardRows(of.items, shareOf);
  const shares = tiers.map((tier) => tier.map(shareOf));
  const { width, height } = BOARD_MM[paper];
  const laid = boardTiers(shares, width, height);
  return {
    id: 'board',
    title: BOARD.title(of.option.name),
    page: (
      <div className="board-page">
        <p>{BOARD.intro}</p>
        <section className="board" aria-label={BOARD.board(of.option.name)}>
          {tiers.map((tier, i) => (
            <Row key={tier[0]!.id} set={set} items={tier} laid={laid[i]!} />
          ))}
        </section>
      </div>
    ),
  };
}

interface RowProps {
  readonly set: HandoverSet;
  readonly items: HandoverOption['items'];
  readonly laid: BoardTier;
}

function Row({ set, items, laid }: RowProps) {
  return (
    <div className="board-row">
      {items.map((item, i) => (
        <figure key={item.id} style={{ width: `${laid.widths[i]!}mm` }}>
          <PaperSwatch
            paint={set.paintOf(item.finish, item.laying)}
            width_mm={laid.widths[i]!}
            height_mm={laid.height}
            className="board-swatch"
          />
          <figcaption className="board-label">
            <p>
              <strong>{item.id}</strong> {sheenWord(item.finish)}
            </p>
            <p className="board-name">{finishName(item.finish)}</p>
            <p className="board-batch">
              <span>{BOARD.batch}</span>
              <span />
            </p>
          </figcaption>
        </figure>
      ))}
    </div>
  );
}
