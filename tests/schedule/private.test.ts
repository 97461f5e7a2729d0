import { expect, it } from 'vitest';
import { startProject } from '../../src/app/showroom/start-project';
import { projectText } from '../../src/io/project-file';
import { optionAlone } from '../../src/model/option-alone';
import { demoAfter, OPTION } from './schedule';

const SECRET = 'Somebody private';

const project = demoAfter(
  { kind: 'set-job', job: { prepared_for: SECRET, place: SECRET, brief: SECRET } },
  { kind: 'set-assumptions', assumptions: { kerf_mm: 4.321 } },
  {
    kind: 'set-item',
    option: OPTION,
    record: { item: 'BS1', finish: 'TL-01', note: SECRET, approved: { by: SECRET, on: '2026-05-04' } },
  },
  { kind: 'set-extra', option: OPTION, extra: { id: 'X1', what: SECRET, stage: 'paint' } },
  {
    kind: 'set-sample',
    sample: {
      finish: 'TL-01',
      status: 'received',
      verdicts: [{ light: 'Noon', by: SECRET, on: '2026-05-04', verdict: 'holds' }],
    },
  },
);

it('a file keeps what is said of a job; a link and a showroom get none of it', () => {
  expect(projectText(project).match(new RegExp(SECRET, 'g'))).toHaveLength(7);
  const option = project.options.find(({ id }) => id === OPTION)!;
  const showroom = { name: 'Range', start: project, option: OPTION, range: { project: true, libraries: [] } };
  for (const given of [optionAlone(project, option), startProject(showroom as never)]) {
    const text = projectText(given);
    expect(text).not.toContain(SECRET);
    expect(text).not.toContain('4.321');
  }
});
