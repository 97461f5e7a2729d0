import { expect, it } from 'vitest';
import { applyCommand } from '../../src/model/apply-command';
import type { Option, Project } from '../../src/model/project';
import { cautionsFor } from '../../src/ui/cautions';
import { terrace } from './terrace';

const project = terrace();
const ours = (of: Project): Option => of.options.find((one) => one.id === 'our-floor')!;
const codes = (of: Project) => cautionsFor(of, ours(of), null).map((caution) => caution.code);

function lay(surface: 'counter' | 'island-counter' | 'floor', finish: string, of: Project): Project {
  const laid = applyCommand(of, { kind: 'lay-finish', option: 'our-floor', surface, finish });
  if (!laid.ok) throw new Error(laid.problem.text);
  return laid.value;
}

it('warns of dust while a counter is of stone and no longer when none is', () => {
  expect(codes(project)).toContain('dust');
  const without = lay('island-counter', 'SS-01', lay('counter', 'SS-01', project));
  expect(codes(without)).not.toContain('dust');
});

it('asks for the slip value of a hard floor only', () => {
  expect(codes(project)).toContain('slip');
  expect(codes(lay('floor', 'WD-01', project))).not.toContain('slip');
});

it('mentions glare for a polished top', () => {
  expect(codes(project)).not.toContain('glare');
  expect(codes(lay('counter', 'ST-05', project))).toContain('glare');
});

it('always sends one to the cooktop manual', () => {
  expect(codes(project)).toContain('heat');
});
