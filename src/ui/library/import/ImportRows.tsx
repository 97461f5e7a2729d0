import { useVirtualizer } from '@tanstack/react-virtual';
import { useMemo, useRef, useState } from 'react';
import type { Problem } from '../../../engine/result';
import type { ImportOutcome, KeptRow, RefusedRow } from '../../../io/sheet/types';
import { codeOf } from '../../../model/merge-finishes';
import { finishFacts } from '../../drawer/finish-facts';
import { useFacts } from '../../drawer/use-facts';
import { Swatch } from '../../swatch/Swatch';
import { givenText } from '../../words/given';
import { IMPORT } from '../../words/import';
import { decimal, labText } from '../../words/numbers';
import { priceOrBand } from '../../words/price';
import { problemWords } from '../../words/problems';
import type { PaintOf } from '../library-props';
import { nameOf } from '../near-lrv';
import { isWaiting, noticedOf, rowsOfOutcome } from './outcome-rows';

interface ImportRowsProps {
  readonly outcome: ImportOutcome;
  readonly isWorking: boolean;
  readonly paintOf: PaintOf;
}

const ROW_PX = 56;

/** What becomes of each row, in the order of the file; only those in sight are made. */
export function ImportRows({ outcome, isWorking, paintOf }: ImportRowsProps) {
  const [onlyProblems, setOnlyProblems] = useState(false);
  const box = useRef<HTMLDivElement>(null);
  const all = useMemo(() => rowsOfOutcome(outcome), [outcome]);
  const noticed = noticedOf(outcome);
  const waiting = outcome.refused.filter(isWaiting).length;
  const rows = useMemo(
    () => (onlyProblems ? all.filter((row) => problemsOf(row).length > 0) : all),
    [all, onlyProblems],
  );
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => box.current,
    estimateSize: () => ROW_PX,
    getItemKey: (i) => rows[i]!.row,
    overscan: 6,
  });
  const items = virtual.getVirtualItems();
  const [first, last] = [items[0]?.index ?? 0, items.at(-1)?.index ?? 0];
  useFacts(
    useMemo(
      () => rows.slice(first, last + 1).flatMap((row) => ('finish' in row ? [row.finish] : [])),
      [rows, first, last],
    ),
  );
  return (
    <>
      <div className="import-counts">
        <h4>
          <span role="status">
            {isWorking
              ? IMPORT.working
              : IMPORT.counts(outcome.kept.length, waiting, outcome.refused.length - waiting, noticed)}
          </span>
        </h4>
        <label className="check">
          <input type="checkbox" checked={onlyProblems} onChange={() => setOnlyProblems(!onlyProblems)} />
          {IMPORT.onlyProblems}
        </label>
      </div>
      <div className="import-heads small quiet" aria-hidden="true">
        {IMPORT.heads.map((head) => (
          <span key={head}>{head}</span>
        ))}
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: keys scroll it */}
      <section ref={box} className="import-box ring-inside" tabIndex={0} aria-label={IMPORT.list}>
        {rows.length === 0 ? (
          <p className="range-none">{onlyProblems ? IMPORT.noProblems : IMPORT.nothing}</p>
        ) : (
          <ol className="import-rows" style={{ height: virtual.getTotalSize() }}>
            {items.map(({ index, key, start }) => (
              <li
                key={key}
                ref={virtual.measureElement}
                className="import-row"
                data-index={index}
                data-refused={isRefused(rows[index]!) || undefined}
                aria-posinset={index + 1}
                aria-setsize={rows.length}
                style={{ transform: `translateY(${start}px)` }}
              >
                <Row row={rows[index]!} paintOf={paintOf} />
              </li>
            ))}
          </ol>
        )}
      </section>
    </>
  );
}

const isRefused = (row: KeptRow | RefusedRow): boolean => 'problem' in row && !isWaiting(row);

const problemsOf = (row: KeptRow | RefusedRow): readonly Problem[] => ('problem' in row ? [row.problem] : row.notices);

function Row({ row, paintOf }: { readonly row: KeptRow | RefusedRow; readonly paintOf: PaintOf }) {
  const said = problemsOf(row).map((problem) => (
    <span key={problem.code + problem.text} className="import-problem-of small">
      {problemWords(problem)} {problem.remedy}
    </span>
  ));
  if ('problem' in row) {
    const line = row.problem.at?.line;
    return (
      <>
        <span className="import-refused small">{isWaiting(row) ? IMPORT.waiting : IMPORT.refused}</span>
        <span className="import-name">
          <span>{row.name || row.code || (line === undefined ? '' : IMPORT.line(line))}</span>
          <span className="small quiet">
            {[row.name && row.code, line !== undefined && IMPORT.line(line)].filter(Boolean).join(', ')}
          </span>
        </span>
        <span className="import-notes">{said}</span>
      </>
    );
  }
  const facts = finishFacts(row.finish);
  const [given] = row.finish.components;
  return (
    <>
      <Swatch paint={paintOf(row.finish)} width={52} height={36} />
      <span className="import-name">
        <span>{nameOf(row.finish)}</span>
        <span className="small quiet">
          {[codeOf(row.finish), priceOrBand(row.finish.supply), row.finish.supply?.availability]
            .filter(Boolean)
            .join(' · ')}
        </span>
      </span>
      <span className="import-notes">
        {given && <span className="small">{givenText(given.color, given.lrv)}</span>}
        {facts.ok && (
          <span className="small quiet">{IMPORT.makes(labText(facts.value.lab_d65), decimal(facts.value.lrv))}</span>
        )}
        {said}
      </span>
    </>
  );
}
