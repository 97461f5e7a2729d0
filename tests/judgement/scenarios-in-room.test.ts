import { describe, expect, it } from 'vitest';
import type { Assessment, WarningCode } from '../../src/engine/judge/assessment';
import { holdsIn } from '../../src/engine/judge/holds';
import { judge } from '../../src/engine/judge/judge';
import type { SurfaceId } from '../../src/engine/surface';
import { studyOption } from '../../src/kitchen/study/assess-option';
import { judgeTried } from '../../src/kitchen/study/judge-tried';
import type { Finish, Project } from '../../src/model/project';
import { terrace } from '../ui/terrace';

// The demo kitchen by day, its light from a solved room: what is said there of schemes whose answer is known from the samples.

const project = terrace();
const OPTION = 'our-floor';
const found = studyOption(project, OPTION, project.settings[0]!.id);
if (!found.ok) throw new Error(found.problem.text);
const { study, setting } = found.value;

const FRONTS: readonly SurfaceId[] = ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts', 'plinth'];

function assessed(change: Partial<Record<SurfaceId, string>>, of: Project = project): Assessment {
  const laid: Project = {
    ...of,
    options: of.options.map((option) => ({
      ...option,
      scheme: Object.fromEntries(
        Object.entries(option.scheme).map(([surface, placement]) => {
          const finish = change[surface as SurfaceId];
          return [surface, finish ? { ...placement, finish, laying: { layout: 'none' } } : placement];
        }),
      ) as typeof option.scheme,
    })),
  };
  const input = judgeTried(laid, OPTION, study, setting);
  if (!input.ok) throw new Error(input.problem.text);
  return holdsIn(input.value, judge(input.value), { draws: 60 });
}

const codes = (of: Assessment, ...severities: readonly string[]): WarningCode[] =>
  of.warnings.filter((w) => severities.includes(w.severity)).map((w) => w.code);
const allOn = (surfaces: readonly SurfaceId[], finish: string) => Object.fromEntries(surfaces.map((s) => [s, finish]));

describe('in a solved room', () => {
  it('the slate floor under blue-green fronts lacks warmth, and the foot of the cabinets is lost', () => {
    const told = codes(assessed({}), 'grave', 'visible');
    expect(told).toContain('lacks-warm');
    expect(told).toContain('weak-edge');
  });

  it('birch boards in place of slate settle both', () => {
    const told = codes(assessed({ floor: 'WD-01' }), 'grave', 'visible');
    expect(told).not.toContain('lacks-warm');
    expect(told).not.toContain('weak-edge');
    expect(told).not.toContain('cannot-tell');
  });

  it('charges no white with the light that birch throws on it', () => {
    const { warnings } = assessed({ floor: 'WD-01' });
    expect(warnings.filter((w) => w.code === 'too-yellow' || w.code === 'white-looks-dirty')).toEqual([]);
  });

  it('a yellowish wall beside the cool counter is said as such, from the samples', () => {
    const warning = assessed({ wall: 'PT-07' }).warnings.find((w) => w.code === 'too-yellow')!;
    expect(warning).toMatchObject({ severity: 'grave', basis: 'sample' });
    expect(warning.surfaces).toContain('wall');
  });

  it('one finish on everything has nothing to be compared with', () => {
    const everything = allOn(Object.keys(project.options[0]!.scheme) as SurfaceId[], 'PT-02');
    const one = assessed(everything);
    expect(one.pairs).toEqual([]);
    expect(codes(one, 'grave', 'visible').filter((code) => code !== 'low-light')).toEqual([]);
  });

  it('says nothing grave where all colors are known by eye only', () => {
    const byEye = (finish: Finish): Finish => ({ ...finish, provenance: 'by-eye' });
    const rough = assessed({ wall: 'PT-07', floor: 'ST-02' }, { ...project, library: project.library.map(byEye) });
    expect(codes(rough, 'grave').filter((code) => code !== 'low-light')).toEqual([]);
    for (const w of rough.warnings) {
      if ((w.holds_in ?? 1) < 0.85) expect(w.text).toMatch(/\bmay\b|cannot tell|likely/i);
    }
  });

  it('weighs the edge more where someone sees badly', () => {
    const edge = (of: Project) => assessed({}, of).warnings.find((w) => w.code === 'weak-edge')!;
    expect([edge(project).severity, edge({ ...project, users: ['low-vision'] }).severity]).toEqual([
      'visible',
      'grave',
    ]);
  });

  it('does not change with finishes that lie nowhere, their order and their names', () => {
    const used = new Set(project.options.flatMap(({ scheme }) => Object.values(scheme).map((p) => p.finish)));
    const kept = project.library.filter(({ id, class: kind }) => used.has(id) || kind === 'grout').reverse();
    const bare = { ...project, library: kept.map((finish) => ({ ...finish, label: 'x' })) };
    const { warnings, balance, pairs } = assessed(allOn(FRONTS, 'PT-01'), bare);
    const whole = assessed(allOn(FRONTS, 'PT-01'));
    expect({ warnings, balance, pairs }).toEqual({
      warnings: whole.warnings,
      balance: whole.balance,
      pairs: whole.pairs,
    });
  });
});
