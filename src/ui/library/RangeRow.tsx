import { memo, type Ref } from 'react';
import type { ComponentRecord } from '../../engine/judge/assessment';
import { codeOf } from '../../model/merge-finishes';
import type { Finish } from '../../model/project';
import { sheenOf } from '../../model/sheens';
import { Swatch } from '../swatch/Swatch';
import type { SwatchPaint } from '../swatch/swatch-paint';
import { undertoneLabel } from '../words/findings';
import { CLASS_WORDS, PROVENANCE_SHORT, SHEEN_WORDS } from '../words/finishes';
import { leadTime } from '../words/lead-time';
import { RANGE } from '../words/libraries';
import { integer } from '../words/numbers';
import { OFF_BY, offBy } from '../words/off-by';
import { priceOrBand } from '../words/price';
import { nameOf } from './near-lrv';

interface RangeRowProps {
  readonly ref: Ref<HTMLTableRowElement>;
  /** From 0, in the order shown. */
  readonly index: number;
  readonly top: number;
  readonly finish: Finish;
  /** Null while they are worked out. */
  readonly facts: ComponentRecord | null;
  readonly paint: SwatchPaint;
  readonly isChosen: boolean;
  readonly isActive: boolean;
  readonly onFocus: (id: string) => void;
  readonly onChoose: (id: string, isRange: boolean) => void;
  readonly onEdit: (id: string) => void;
}

/** A finish in a line: what it is, how it is known and how it is had. Made anew only where something of it changed. */
export const RangeRow = memo(function RangeRow(props: RangeRowProps) {
  const { ref, index, top, finish, facts, paint, isChosen, isActive, onFocus, onChoose, onEdit } = props;
  return (
    <tr
      ref={ref}
      className="range-row range-finish ring-inside"
      aria-rowindex={index + 2}
      aria-selected={isChosen}
      tabIndex={isActive ? 0 : -1}
      data-index={index}
      data-row={index}
      data-finish={finish.id}
      style={{ transform: `translateY(${top}px)` }}
      onFocus={() => onFocus(finish.id)}
      onClick={(event) => {
        if (!(event.target instanceof Element) || event.target.closest('.range-choose')) return;
        if (event.shiftKey || event.ctrlKey || event.metaKey) onChoose(finish.id, event.shiftKey);
        else onEdit(finish.id);
      }}
    >
      <RangeCells finish={finish} facts={facts} paint={paint} isChosen={isChosen} onChoose={onChoose} />
    </tr>
  );
});

type RangeCellsProps = Pick<RangeRowProps, 'finish' | 'facts' | 'paint' | 'isChosen' | 'onChoose'>;

/** What stands in the line: nothing of it changes when the line only moves. */
const RangeCells = memo(function RangeCells({ finish, facts, paint, isChosen, onChoose }: RangeCellsProps) {
  const { supply } = finish;
  const price = priceOrBand(supply);
  const had = [supply?.availability, supply?.lead_time_weeks !== undefined && leadTime(supply.lead_time_weeks)].filter(
    Boolean,
  );
  const name = nameOf(finish);
  return (
    <>
      <td className="range-choose">
        <label className="range-check-place">
          <input
            type="checkbox"
            className="range-check"
            tabIndex={-1}
            aria-label={RANGE.choose(name)}
            checked={isChosen}
            onChange={(event) => onChoose(finish.id, (event.nativeEvent as MouseEvent).shiftKey)}
          />
        </label>
      </td>
      <td className="range-swatch">
        <Swatch paint={paint} width={52} height={36} />
      </td>
      <td className="range-name">
        <span className="range-label">{name}</span>
        <span className="small quiet">{codeOf(finish)}</span>
      </td>
      <td className="range-material small">
        <span>{CLASS_WORDS[finish.class]}</span>
        <span className="quiet">
          {SHEEN_WORDS[sheenOf(finish.gloss_gu)]}, {RANGE.gloss(finish.gloss_gu)}
        </span>
      </td>
      <td className="range-lrv">
        <span className="range-unit small quiet" aria-hidden="true">
          {RANGE.columns.lrv}{' '}
        </span>
        {facts ? integer(facts.lrv) : '…'}
      </td>
      <td className="range-undertone small">{facts ? undertoneLabel(facts) : '…'}</td>
      <td className="range-known small">
        <span>{PROVENANCE_SHORT[finish.provenance]}</span>
        {facts && (
          <span className="quiet" title={OFF_BY.meaning}>
            {OFF_BY.short(offBy(facts.uncertainty_de00))}
          </span>
        )}
      </td>
      <td className="range-supply small">
        {price && <span>{price}</span>}
        {had.length > 0 && <span className="quiet">{had.join(' · ')}</span>}
      </td>
      <td className="range-tags small">
        {finish.tags?.map((tag) => (
          <span key={tag} className="tag">
            {tag}
          </span>
        ))}
      </td>
    </>
  );
});
