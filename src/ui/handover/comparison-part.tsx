import { SURFACES, type SurfaceId } from '../../engine/surface';
import { lostWarnings } from '../../kitchen/carry/new-warnings';
import { isEmpty } from '../../model/empty-surface';
import { surfaceName } from '../words/engine-words';
import { LAYOUT_WORDS } from '../words/finishes';
import { COMPARISON } from '../words/handover';
import { settingShortName } from '../words/picture';
import { retold } from '../words/spoken';
import type { Block, FlowPart, SheetRow } from './blocks';
import { finishName } from './finish-words';
import { gravestFirst } from './gravest-first';
import type { HandoverOption, HandoverSet } from './handover-set';
import { PaperSwatch } from './PaperSwatch';
import { PrintedFinding } from './PrintedFinding';

/** What differs between the options: finishes by surface, and findings that not all of them have. */
export function comparisonPart(set: HandoverSet): FlowPart {
  const { options } = set;
  const surfaces = SURFACES.filter((surface) => set.present.includes(surface) && differs(options, surface));
  const heads = options.map(({ option }) => ({ head: option.name, width: 4 }));
  const differing: readonly Block[] =
    surfaces.length === 0
      ? [{ kind: 'flow', key: 'alike', node: <p>{COMPARISON.alike}</p> }]
      : [
          {
            kind: 'table',
            key: 'surfaces',
            label: COMPARISON.label,
            columns: [{ head: COMPARISON.surface, width: 2 }, ...heads],
            rows: surfaces.map((surface) => ({
              key: surface,
              cells: [
                surfaceName(surface),
                ...options.map((of) => <Laid key={of.option.id} {...{ set, of, surface }} />),
              ],
            })),
          },
        ];
  return {
    id: 'comparison',
    title: COMPARISON.title,
    blocks: [
      { kind: 'flow', key: 'intro', keeps: true, node: <p>{COMPARISON.intro}</p> },
      { kind: 'flow', key: 'surfaces-title', keeps: true, node: <h4>{COMPARISON.surfaces}</h4> },
      ...differing,
      ...(['day', 'evening'] as const).flatMap((light) => findingBlocks(options, light)),
    ],
  };
}

/** Whether a surface has not the same finish, laid alike, in all options. */
function differs(options: readonly HandoverOption[], surface: SurfaceId): boolean {
  const laid = options.map(({ option }) => {
    const { finish, laying } = option.scheme[surface];
    return JSON.stringify([finish, laying.layout, laying.grout ?? null]);
  });
  return laid.some((one) => one !== laid[0]);
}

interface LaidProps {
  readonly set: HandoverSet;
  readonly of: HandoverOption;
  readonly surface: SurfaceId;
}

function Laid({ set, of, surface }: LaidProps) {
  const placement = of.option.scheme[surface];
  const finish = set.project.library.find(({ id }) => id === placement.finish);
  if (!finish || isEmpty(placement)) return null;
  return (
    <span className="palette-name">
      <PaperSwatch paint={set.paintOf(finish, placement.laying)} width_mm={9} height_mm={9} />
      <span>
        {finishName(finish)}
        {placement.laying.layout !== 'plain' && (
          <span className="sheet-small">{LAYOUT_WORDS[placement.laying.layout]}</span>
        )}
      </span>
    </span>
  );
}

/** In one light: the balance of each option, and what it has that another one has not. */
function findingBlocks(options: readonly HandoverOption[], light: 'day' | 'evening'): readonly Block[] {
  const name = settingShortName(options[0]![light].setting.name);
  return [
    { kind: 'flow', key: `${light}-title`, keeps: true, node: <h4>{COMPARISON.findings(name)}</h4> },
    {
      kind: 'table',
      key: `${light}-findings`,
      label: COMPARISON.findings(name),
      columns: [
        { head: COMPARISON.option, width: 2 },
        { head: COMPARISON.own, width: 8 },
      ],
      rows: options.flatMap((of) => optionRows(of, light, options)),
    },
  ];
}

function optionRows(
  { option, ...views }: HandoverOption,
  light: 'day' | 'evening',
  all: readonly HandoverOption[],
): readonly SheetRow[] {
  const { assessment } = views[light];
  if (!assessment) return [{ key: option.id, begins: true, cells: [option.name, COMPARISON.unknown] }];
  const others = all.filter((of) => of.option !== option).map((of) => of[light].assessment);
  const own = assessment.warnings.filter(
    (one) =>
      one.severity !== 'note' &&
      one.text !== assessment.balance.sentence &&
      others.some((other) => other !== null && lostWarnings([one], other.warnings).length > 0),
  );
  const sentence = (
    <>
      <p>{retold(assessment.balance.sentence)}</p>
      {own.length === 0 && <p className="sheet-small">{COMPARISON.none}</p>}
    </>
  );
  return [
    { key: option.id, begins: true, cells: [option.name, sentence] },
    ...gravestFirst(own).map((warning) => ({
      key: `${option.id} ${warning.code} ${warning.text}`,
      cells: [
        <span key="option" className="sheet-small">
          {option.name}
        </span>,
        <PrintedFinding key="finding" warning={warning} isShort={true} />,
      ],
    })),
  ];
}
