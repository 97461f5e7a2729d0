import { expect, it } from 'vitest';
import { rangeShelf } from '../../src/app/showroom/range-shelf';
import { startProject } from '../../src/app/showroom/start-project';
import { applyCommand } from '../../src/model/apply-command';
import type { Library } from '../../src/model/library';
import { terrace } from './terrace';

const whole = terrace();
const showroom = {
  name: 'Showroom',
  option: 'our-floor',
  minutes: 3,
  fillsScreen: false,
  typesIn: false,
  start: whole,
};

const log = [{ id: 'L1', at: '2026-03-02T10:00:00+00:00', text: 'Mrs. Smith calls on Friday' }];

it('is the project without what staff noted, where customers choose from its finishes', () => {
  const noted = { ...whole, note: 'second visit', log } as unknown as typeof whole;
  const start = startProject({ ...showroom, start: noted, range: { project: true, libraries: [] } });
  expect(start).toEqual({ ...whole, note: '' });
});

it('is offered the libraries of its range only', async () => {
  const library = (id: string) =>
    ({ type: 'upstand-library', version: 2, id, name: id, note: '', finishes: [] }) satisfies Library;
  const all = { list: async () => [library('range'), library('own')], onChange: () => () => undefined };
  const shelf = rangeShelf(all, { ...showroom, range: { project: true, libraries: ['range', 'gone'] } });
  expect((await shelf.list()).map(({ id }) => id)).toEqual(['range']);
});

it('has only the finishes that lie there, grouts included, where customers choose from libraries', () => {
  const start = startProject({ ...showroom, range: { project: false, libraries: ['range'] } });
  expect(start.library.length).toBeLessThan(whole.library.length);
  expect(start.options).toBe(whole.options);
  const ids = new Set(start.library.map(({ id }) => id));
  for (const { scheme } of start.options) {
    for (const { finish, laying } of Object.values(scheme)) {
      expect(ids).toContain(finish);
      if (laying.grout) expect(ids).toContain(laying.grout);
    }
  }
  // It is a project like any other: a change of it is taken.
  const [option] = start.options;
  expect(applyCommand(start, { kind: 'rename', what: 'option', id: option!.id, name: 'Another' }).ok).toBe(true);
});
