import { useMemo, useState } from 'react';
import { tableCsv } from '../../io/table-csv';
import { cautionsOf } from '../../kitchen/cautions-of';
import { scheduleOf } from '../../kitchen/schedule/schedule-of';
import { SCHEDULE_COLUMNS, scheduleTable } from '../../kitchen/schedule/schedule-table';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import type { OrderCommand } from '../../model/commands';
import type { Project } from '../../model/project';
import { inTradeWords } from '../../model/trade-words';
import { ScheduleDialog } from '../../ui/schedule/ScheduleDialog';
import { useApp, useAppState } from '../context';
import { fileNameOf } from '../file-name';
import { frozenRevision } from '../handover/frozen-revision';
import { wordsOf } from '../manner';
import { saveBlob } from '../save-blob';
import { chosenOption, documentOf } from '../state';
import { today } from '../today';
import { usePaints } from '../use-option-paints';

const PLAIN = { layout: 'plain' } as const;

/** The schedule of the option on screen, as it is or as it was frozen; what is tried is not in it, for nothing was decided by it. */
export function SchedulePane() {
  const { store, actions } = useApp();
  const present = useAppState(documentOf);
  const [frozen, setFrozen] = useState<string | null>(null);
  const past = present.revisions?.find(({ id }) => id === frozen) ?? null;
  const project = useMemo(() => (past ? asItWas(present, past.id) : present), [present, past]);
  const shown = useAppState(chosenOption).id;
  const assessment = useAppState((state) => state.assessments[shown] ?? null);
  const option = project.options.find(({ id }) => id === shown) ?? project.options[0]!;
  const words = useAppState(wordsOf);
  const paintOf = usePaints();
  const day = today(past ? new Date(past.at) : undefined);
  const schedule = useMemo(
    () => scheduleOf(project, option, cautionsOf(project, option, past ? null : assessment), day),
    [project, option, past, assessment, day],
  );
  const isFrozen = useMemo(() => frozenRevision(present) !== null, [present]);
  const library = useMemo(() => new Map(project.library.map((finish) => [finish.id, finish])), [project.library]);
  const run = (command: OrderCommand, continues = false) => actions.run(command, continues);
  return (
    <ScheduleDialog
      option={option.name}
      kitchen={project.kitchen}
      schedule={schedule}
      library={library}
      revisions={present.revisions ?? []}
      present={present}
      past={past}
      isFrozen={isFrozen}
      today={day}
      records={option.items ?? []}
      extras={option.extras ?? []}
      samples={project.samples ?? []}
      job={project.job ?? {}}
      days={schedule.days}
      assumptions={project.quantities ?? {}}
      paintOf={(row: ScheduleRow) => {
        const finish = row.finish === null ? undefined : library.get(row.finish);
        const [surface] = row.surfaces;
        if (!finish) return null;
        const laying = row.kind === 'grout' || surface === undefined ? PLAIN : option.scheme[surface].laying;
        return paintOf(finish, laying, true);
      }}
      onRecord={(record, continues) => run({ kind: 'set-item', option: option.id, record }, continues)}
      onState={({ surfaces }, state) => actions.setState(surfaces, state)}
      onExtra={(extra, continues) => run({ kind: 'set-extra', option: option.id, extra }, continues)}
      onRemoveExtra={(id) => run({ kind: 'remove-extra', option: option.id, id })}
      onSample={(sample, continues) => run({ kind: 'set-sample', sample }, continues)}
      onRemoveSample={(finish) => run({ kind: 'remove-sample', finish })}
      onJob={(job, continues) => run({ kind: 'set-job', job }, continues)}
      onAssumptions={(assumptions) => run({ kind: 'set-assumptions', assumptions })}
      onFreeze={actions.freeze}
      onLookAt={setFrozen}
      onCsv={() => {
        const text = tableCsv(
          SCHEDULE_COLUMNS,
          scheduleTable(schedule, (text) => inTradeWords(text, words)),
          true,
        );
        const name = [fileNameOf(project), past?.id, 'schedule.csv'].filter(Boolean).join(' ');
        saveBlob(new Blob([text], { type: 'text/csv;charset=utf-8' }), name);
      }}
      onPrint={() => store.setState({ ordering: false, handover: true })}
      onClose={() => store.setState({ ordering: false })}
    />
  );
}

/** A project on the day a revision of it was frozen: with that one as the latest, so that its rows stand as they were signed. */
function asItWas({ revisions = [] }: Project, revision: string): Project {
  const until = revisions.slice(0, revisions.findIndex(({ id }) => id === revision) + 1);
  return { ...until.at(-1)!.document, revisions: until };
}
