import { expect, it } from 'vitest';
import type { Assessment } from '../../src/engine/judge/assessment';
import { applyCommand } from '../../src/model/apply-command';
import { cautionsFor } from '../../src/model/cautions';
import type { Option, Project } from '../../src/model/project';
import { cautionText } from '../../src/ui/words/cautions';
import { terrace } from '../ui/terrace';

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

it('names an edge whose sides differ by less than 20 LRV (BS 8300-2), and words it', () => {
  const lrv = (surface: string, value: number) => ({ surface, average: { lrv: value } });
  const surfaces = [lrv('counter', 60), lrv('floor', 41), lrv('base-fronts', 20), lrv('wall', 80)];
  const cautions = cautionsFor(project, ours(project), { surfaces } as unknown as Assessment);
  const edges = cautions.filter((caution) => caution.code === 'low-vision');
  expect(edges).toEqual([{ code: 'low-vision', surfaces: ['counter', 'floor'], stepLrv: 19 }]);
  expect(cautionText(edges[0]!)).toContain('counter and floor differ by only 19 LRV');
});
