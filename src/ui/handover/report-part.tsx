import type { Warning } from '../../engine/judge/assessment';
import { BalanceBar } from '../findings/BalanceBar';
import { FINDINGS } from '../words/findings';
import { REPORT } from '../words/handover';
import { settingShortName } from '../words/picture';
import { retold } from '../words/spoken';
import type { Block, FlowPart } from './blocks';
import { gravestFirst } from './gravest-first';
import type { HandoverOption, HandoverView } from './handover-set';
import { PrintedFinding } from './PrintedFinding';

/** What was found in an option by day and in the evening, in the sentences of the screen. */
export function reportPart({ option, day, evening }: HandoverOption): FlowPart {
  const [byDay, later] = [day.assessment?.warnings ?? [], evening.assessment?.warnings ?? []];
  const both = byDay.filter((one) => later.some((other) => isSame(one, other)));
  const isShared = (one: Warning) => both.some((other) => isSame(one, other));
  const hasBoth = day.assessment !== null && evening.assessment !== null;
  return {
    id: `report-${option.id}`,
    title: REPORT.title(option.name),
    blocks: [
      {
        kind: 'flow',
        key: 'balances',
        node: (
          <div className="printed-balances">
            <PrintedBalance view={day} />
            <PrintedBalance view={evening} />
          </div>
        ),
      },
      ...(hasBoth ? findingBlocks('both', REPORT.both, both, REPORT.nothing) : []),
      ...[
        { key: 'day', view: day, warnings: byDay },
        { key: 'evening', view: evening, warnings: later },
      ].flatMap(({ key, view, warnings }) =>
        view.assessment
          ? findingBlocks(
              `only-${key}`,
              REPORT.only(settingShortName(view.setting.name)),
              warnings.filter((one) => !isShared(one)),
              hasBoth ? REPORT.nothingMore : REPORT.nothing,
            )
          : [],
      ),
    ],
  };
}

const isSame = (one: Warning, other: Warning): boolean => one.text === other.text && one.severity === other.severity;

function PrintedBalance({ view: { setting, assessment } }: { readonly view: HandoverView }) {
  const name = settingShortName(setting.name);
  const title = <h4>{REPORT.balance(name)}</h4>;
  if (!assessment) {
    return (
      <section>
        {title}
        <p>{REPORT.missing}</p>
      </section>
    );
  }
  const { balance } = assessment;
  const [warm, leaning, cool, neutral] = balance.installed.shares;
  const isDark = assessment.setting.cct_k === null;
  return (
    <section className="printed-balance">
      {title}
      <p className="printed-sentence">{retold(balance.sentence)}</p>
      <BalanceBar
        samples={[balance.warm_share, balance.leaning_share, balance.neutral_share, balance.cool_share]}
        installed={isDark ? null : [warm, leaning, neutral, cool]}
      />
      <p className="sheet-small">{isDark ? FINDINGS.dark(name) : FINDINGS.setting(name, assessment.setting.cct_k)}</p>
    </section>
  );
}

function findingBlocks(key: string, title: string, warnings: readonly Warning[], nothing: string): readonly Block[] {
  if (warnings.length === 0) {
    return [
      {
        kind: 'flow',
        key: `${key}-title`,
        node: (
          <>
            <h4>{title}</h4>
            <p>{nothing}</p>
          </>
        ),
      },
    ];
  }
  return [
    { kind: 'flow', key: `${key}-title`, keeps: true, node: <h4>{title}</h4> },
    ...gravestFirst(warnings).map(
      (warning): Block => ({
        kind: 'flow',
        key: `${key}-${warning.code}-${warning.surfaces.join('+')}-${warning.text}`,
        node: <PrintedFinding warning={warning} />,
      }),
    ),
  ];
}
