import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { Assessment, Severity, Warning } from '../../engine/judge/assessment';
import type { SurfaceId } from '../../engine/surface';
import { cautionText, withCautions } from '../../model/caution-words';
import type { Caution } from '../../model/cautions';
import { CopyButton } from '../parts/CopyButton';
import { CAUTIONS } from '../words/cautions';
import { FINDINGS } from '../words/findings';
import { PAIRS } from '../words/pairs';
import { retold } from '../words/spoken';
import { BalanceCard } from './BalanceCard';
import { FineList } from './FineList';
import { WarningItem } from './WarningItem';
import type { HelpSource } from './WhatHelps';
import './findings.css';

export interface FindingsProps {
  /** Null until the first light. */
  readonly assessment: Assessment | null;
  readonly optionName: string;
  readonly settingName: string;
  /** Nothing shines in the setting: there is nothing to say of surfaces as installed. */
  readonly isDark: boolean;
  readonly cautions: readonly Caution[];
  /** Whether what is shown still belongs to the document before the last change. */
  readonly stale: boolean;
  /** The reading card or a panel, shown in place of the list; null for the list. */
  readonly inPlace: ReactNode;
  readonly help: HelpSource;
  readonly onReadings: () => void;
  /** What a change of finishes has unsettled; empty where nothing has. */
  readonly notice: ReactNode;
  /** How many decisions it has unsettled. */
  readonly unsettled: number;
  /** What is on trial, begun from what stands here; null while nothing is. */
  readonly trial: string | null;
  /** How the balance moves with the settings. */
  readonly inSettings: ReactNode;
  /** Opens the table of all pairs. */
  readonly onPairs: () => void;
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

const RANK: { readonly [S in Severity]: number } = { grave: 0, visible: 1, note: 2 };

/** Gravest first; within a grade in the order the engine gave. */
const gravestFirst = (warnings: readonly Warning[]): readonly Warning[] =>
  [...warnings].sort((a, b) => RANK[a.severity] - RANK[b.severity]);

const isQuestion = (warning: Warning): boolean => warning.code === 'cannot-tell';

const warningKey = ({ code, basis, surfaces, text }: Warning): string =>
  `${code}-${basis}-${surfaces.join('+')}-${text}`;

/** The findings: the balance, the warnings, what is fine, and what to heed before ordering. */
export function Findings(props: FindingsProps) {
  const { assessment, inPlace } = props;
  const [sheetOpen, setSheetOpen] = useState(false);
  const busy = assessment === null || props.stale || assessment.status === 'pending';
  const isUntried = useUntried(assessment);
  const questions = assessment?.warnings.filter(isQuestion).length ?? 0;
  const warned = assessment?.warnings.filter((one) => one.severity !== 'note' && !isQuestion(one)).length ?? 0;
  const isOpen = sheetOpen || inPlace !== null;
  const readingsButton = useFocusBack(inPlace !== null);
  const body = useScrollFromTop(inPlace !== null, props.trial, sheetOpen && props.unsettled > 0);
  return (
    <section className={`findings ${isOpen ? 'is-open' : ''}`} aria-label={FINDINGS.region} aria-busy={busy}>
      <div className="findings-head">
        <div className="findings-title">
          <h2 tabIndex={-1}>{FINDINGS.balanceOf(props.optionName)}</h2>
          {/* A panel in the list's place has a button of its own to close it. */}
          {inPlace === null && (
            <button
              type="button"
              className="button button-outlined sheet-handle"
              aria-expanded={sheetOpen}
              onClick={() => setSheetOpen(!sheetOpen)}
            >
              {sheetOpen ? FINDINGS.sheetClose : FINDINGS.sheetOpen}
              <span className="quiet">{assessment ? FINDINGS.count(warned, questions, props.unsettled) : ''}</span>
            </button>
          )}
          <button
            type="button"
            className="button button-plain readings-button"
            disabled={!assessment}
            ref={readingsButton}
            onClick={props.onReadings}
          >
            {FINDINGS.readings}
          </button>
        </div>
        {assessment ? (
          <p className="balance-sentence">{retold(assessment.balance.sentence)}</p>
        ) : (
          <p className="balance-sentence">{FINDINGS.waiting}</p>
        )}
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard */}
      <section ref={body} className="findings-body ring-inside" tabIndex={0} aria-label={FINDINGS.body}>
        {inPlace ?? (
          <>
            {props.notice}
            {assessment && (
              <>
                <BalanceCard balance={assessment.balance} isDark={props.isDark} />
                {props.inSettings}
                <p className="findings-basis small quiet" role="status">
                  {props.isDark
                    ? FINDINGS.dark(props.settingName)
                    : FINDINGS.setting(props.settingName, assessment.setting.cct_k)}{' '}
                  {busy ? FINDINGS.pending : ''}
                </p>
                {assessment.warnings.length === 0 && !busy && <p className="findings-none">{FINDINGS.nothing}</p>}
                <ul className="warnings">
                  {gravestFirst(assessment.warnings).map((warning) => (
                    <WarningItem
                      key={warningKey(warning)}
                      warning={warning}
                      assessment={assessment}
                      help={props.help}
                      isChecking={isUntried(warning)}
                      isSaid={warning.text === assessment.balance.sentence}
                      onPoint={props.onPoint}
                    />
                  ))}
                </ul>
                <button type="button" className="button button-outlined" data-opens="pairs" onClick={props.onPairs}>
                  {PAIRS.open}
                </button>
                <FineList pairs={assessment.pairs} onPoint={props.onPoint} />
              </>
            )}
            <details className="fold">
              <summary>
                {CAUTIONS.title} ({props.cautions.length})
              </summary>
              <ul className="fold-list small">
                {props.cautions
                  .map((caution) => retold(cautionText(caution)))
                  .map((text) => (
                    <li key={text}>{text}</li>
                  ))}
              </ul>
            </details>
            <CopyButton
              key={`${assessment?.option}-${assessment?.setting.id}`}
              label={FINDINGS.copy}
              copied={FINDINGS.copied}
              disabled={busy || assessment.status !== 'done'}
              text={() => `${JSON.stringify(assessment && withCautions(assessment, props.cautions), null, 2)}\n`}
            />
          </>
        )}
      </section>
      <div className="findings-standing small">
        <p>{CAUTIONS.planning}</p>
        <p>{CAUTIONS.screen}</p>
      </div>
    </section>
  );
}

/** While an assessment is pending: which of its warnings were not in the last one that was done. Light falls as it falls. */
function useUntried(assessment: Assessment | null): (warning: Warning) => boolean {
  const tried = useRef<ReadonlySet<string>>(new Set());
  useEffect(() => {
    if (assessment && assessment.status !== 'pending') tried.current = new Set(assessment.warnings.map(warningKey));
  }, [assessment]);
  return (warning) =>
    assessment?.status === 'pending' && warning.code !== 'low-light' && !tried.current.has(warningKey(warning));
}

/**
 * The reading card and the list take each other's place: either is read from its top. So are the findings of what is tried, and a sheet
 * that opens on what a change has unsettled, which stands there.
 */
function useScrollFromTop(isReading: boolean, trial: string | null, isNoticeShown: boolean) {
  const body = useRef<HTMLElement>(null);
  const before = useRef({ isReading, trial, isNoticeShown });
  // In braces: some browsers answer a scroll with a promise, which is no way to clean up.
  useEffect(() => {
    const last = before.current;
    const isTried = trial !== null && trial !== last.trial && !isReading;
    if (isReading !== last.isReading || isTried || (isNoticeShown && !last.isNoticeShown)) body.current?.scrollTo(0, 0);
    before.current = { isReading, trial, isNoticeShown };
  }, [isReading, trial, isNoticeShown]);
  return body;
}

/** When the reading card goes and takes the focus with it, the focus moves to the button that brings the card back. */
function useFocusBack(isReading: boolean) {
  const button = useRef<HTMLButtonElement>(null);
  const before = useRef(isReading);
  useEffect(() => {
    if (before.current && !isReading && document.activeElement === document.body) {
      button.current?.focus({ preventScroll: true });
    }
    before.current = isReading;
  }, [isReading]);
  return button;
}
