import { readFileSync } from 'node:fs';
import { parseProject } from '../../src/io/project-file';
import { judgeInPlace } from '../../src/kitchen/study/shortlist-in-place';
import { rankSamples, shortlistSamples } from '../../src/kitchen/study/shortlist-samples';
import { studySettings } from '../../src/kitchen/study/study-settings';
import type { Finish } from '../../src/model/project';
import { inventedLibrary } from './library';
import { median } from './timing';

// What a shortlist costs: a library of 10,000 as samples, once its colors are known, and the best 40 in place in one setting.

const parsed = parseProject(readFileSync(new URL('../../demo-data/terrace.project.json', import.meta.url), 'utf8'));
if (!parsed.ok) throw new Error(parsed.problem.text);
const project = parsed.value;

const library: readonly Finish[] = inventedLibrary(10_000).map(({ finishClass, color }, i) => ({
  id: `F-${i}`,
  label: `Invented finish, F-${i}`,
  class: finishClass === 'grout' ? 'paint' : finishClass!,
  gloss_gu: 20,
  components: [{ role: 'base', share: 1, color }],
  pattern: { kind: 'plain' },
  variation: 'V0',
  provenance: 'declared',
}));

for (const [surface, option] of [
  ['backsplash', 'our-floor'],
  ['base-fronts', 'copied-look'],
] as const) {
  median(`10,000 as samples: ${surface}`, 100, 5, () => shortlistSamples(project, option, surface, { library }));
}
const ranking = rankSamples(project, 'our-floor', 'backsplash');
const studied = studySettings(project, project.settings.slice(0, 1));
if (!ranking.ok || !studied.ok) throw new Error('the demo project cannot be judged');
median('the best in place, one setting', null, 1, () => {
  const steps = judgeInPlace(project, ranking.value, studied.value[0]!);
  let count = 0;
  for (let step = steps.next(); !step.done; step = steps.next()) count++;
  console.log(`  ${count} finishes`);
});
