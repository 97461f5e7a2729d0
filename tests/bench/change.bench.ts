import { readFileSync } from 'node:fs';
import { holdsIn } from '../../src/engine/judge/holds';
import { judge } from '../../src/engine/judge/judge';
import { bakePattern } from '../../src/engine/pattern/bake';
import { parseProject } from '../../src/io/project-file';
import { judgeTried } from '../../src/kitchen/study/judge-tried';
import { beginLight, gatherGroup } from '../../src/kitchen/study/lit-scheme';
import { paintLook } from '../../src/kitchen/study/paint-look';
import { judgeInput } from '../../src/kitchen/study/readings';
import { findRepairs } from '../../src/kitchen/study/repairs/find-repairs';
import { otherSettings, skiesOf } from '../../src/kitchen/study/repairs/other-settings';
import { basisUnder, refineBasis, studyBasis, studyReadings } from '../../src/kitchen/study/room-study';
import { layScheme } from '../../src/kitchen/study/scheme';
import { settingLight } from '../../src/kitchen/study/setting-light';
import { beginScheme, solveSchemeGroup } from '../../src/kitchen/study/solved-scheme';
import { tintsOf } from '../../src/kitchen/study/tints';
import { GROUPS } from '../../src/model/project';
import { median } from './timing';

// What one change costs in the workers, on the demo project: budgets of the product.

const parsed = parseProject(readFileSync(new URL('../../demo-data/terrace.project.json', import.meta.url), 'utf8'));
if (!parsed.ok) throw new Error(parsed.problem.text);
const project = parsed.value;

const finished = <T>(steps: Generator<unknown, T>): T => {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
};
const must = <T>(result: { ok: true; value: T } | { ok: false; problem: { text: string } }): T => {
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
};

const first = median('kitchen change: all up to a first picture', null, 3, () => finished(studyBasis(project)));
const basis = median('kitchen change: nodes at final quality', null, 1, () => finished(refineBasis(first)));
const byDay = must(settingLight(project, project.settings[0]!)).daylight;
const under = median('another hour: daylight alone', null, 3, () => finished(basisUnder(basis, byDay)));
const study = median('kitchen change: surface means and view shares', null, 1, () => studyReadings(under));

for (const id of ['day', 'evening']) {
  const setting = must(settingLight(project, project.settings.find((one) => one.id === id)!));
  const lit = () => {
    const solved = beginScheme(must(layScheme(project, 'our-floor', study.room.surfaces)), GROUPS.length);
    const light = beginLight(study, solved);
    for (const group of GROUPS.keys()) {
      if (setting.levels[group]! <= 0) continue;
      solveSchemeGroup(study, solved, group);
      gatherGroup(study, light, group);
    }
    return light;
  };
  const light = lit();
  const input = judgeInput(project, study, light.solved, setting);
  median(`trial of a changed finish, ${id}`, null, 9, () => must(judgeTried(project, 'our-floor', study, setting)));
  const assessment = judge(input);
  median(`finish change, ${id}: to picture and findings`, 100, 7, () => {
    const now = lit();
    paintLook(study, now, setting);
    return judge(judgeInput(project, study, now.solved, setting));
  });
  median(`lamp change, ${id}: to picture and findings`, 30, 9, () => {
    paintLook(study, light, setting);
    return judge(judgeInput(project, study, light.solved, setting));
  });
  median(`  of which judging, ${id}`, null, 9, () => judge(input));
  median(`sources of tints, ${id} (in slices)`, null, 3, () => tintsOf(study, light.solved, setting));
  median(`what holds under error, ${id}, 200 draws`, null, 3, () => holdsIn(input, assessment));
  const option = project.options.find((one) => one.id === 'our-floor')!;
  const { solved } = light;
  const complete = judgeInput(project, study, solved, setting, tintsOf(study, solved, setting));
  const held = holdsIn(complete, judge(complete));
  const from = { project, option, study, setting, solved, input: complete, held };
  const skies = skiesOf(study);
  median(`what would help, ${id}, other skies not known yet (in slices)`, 2000, 1, () =>
    finished(findRepairs(from, otherSettings(project, id, skies))),
  );
  median(`what would help, ${id}, all settings (in slices)`, 2000, 3, () =>
    finished(findRepairs(from, otherSettings(project, id, skies))),
  );
}
const pattern = must(layScheme(project, 'our-floor', study.room.surfaces)).surfaces.find(
  ({ surface }) => surface === 'counter',
)!.pattern!;
median('bake the veined counter', null, 3, () => bakePattern(pattern.spec));
