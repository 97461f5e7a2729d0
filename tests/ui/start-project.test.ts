import { expect, it } from 'vitest';
import { startProject } from '../../src/app/showroom/start-project';
import { applyCommand } from '../../src/model/apply-command';
import { terrace } from './terrace';

const whole = terrace();
const showroom = {
  name: 'Showroom',
  minutes: 3,
  fillsScreen: false,
  typesIn: false,
  start: whole,
};

it('is the project itself where customers choose from its finishes', () => {
  expect(startProject({ ...showroom, range: { project: true, libraries: [] } })).toBe(whole);
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
