import { readFileSync } from 'node:fs';
import { acceptedRow, inOrder } from '../../src/engine/judge/shortlist/shortlist';
import { parseProject } from '../../src/io/project-file';
import { prepareCandidate } from '../../src/kitchen/study/candidates';
import { rankInSteps, rankSamples } from '../../src/kitchen/study/shortlist-samples';
import { withFinishOn } from '../../src/model/lay-alike';
import type { Library } from '../../src/model/library';
import { offeredCopies, offeredFinishes } from '../../src/model/offered-finishes';
import type { Finish, Project } from '../../src/model/project';
import { createFinishPacker } from '../../src/workers/carry-finishes';
import { createShelfPacker } from '../../src/workers/carry-shelf';
import { shortlistNow } from '../../src/workers/shortlist-desk';
import { inventedLibrary } from './library';
import { median, report } from './timing';

// What a kept library of 10,000 finishes costs: when it comes, when a drawer opens, and at each change of a finish.

const parsed = parseProject(readFileSync(new URL('../../demo-data/terrace.project.json', import.meta.url), 'utf8'));
if (!parsed.ok) throw new Error(parsed.problem.text);
const project = parsed.value;

const finishes: readonly Finish[] = inventedLibrary(10_000).map(({ finishClass, color }, i) => ({
  id: `F-${i}`,
  label: `Invented finish, F-${i}`,
  class: finishClass === 'grout' ? 'paint' : finishClass!,
  gloss_gu: 20,
  components: [{ role: 'base', share: 1, color }],
  pattern: { kind: 'plain' },
  variation: 'V0',
  provenance: 'declared',
}));
const kept: Library = { type: 'upstand-library', version: 2, id: 'kept', name: 'Kept', note: '', finishes };
const shelf = { libraries: [kept], putAside: [] };
// The room is built once, whatever is offered.
rankSamples(project, 'our-floor', 'backsplash');

/** What a drawer is answered with, in the slices of the worker one after the other. */
const answer = (isWhole: boolean, from: readonly Finish[]) => {
  const asked = { option: 'our-floor', surface: 'base-fronts', wishes: [], known: null, isWhole } as const;
  const steps = shortlistNow({ project, library: from, job: null }, asked);
  let step = steps.next();
  for (; !step.done; step = steps.next());
  return step.value;
};
const offeredNow = offeredFinishes(project.library, shelf).finishes;
const first = performance.now();
const some = answer(false, offeredNow);
report('a drawer right after the start, first list', 150, [performance.now() - first]);
console.log(`  ${offeredNow.length - (some?.pending ?? 0)} of ${offeredNow.length} finishes in it`);

const begun = performance.now();
for (const finish of offeredCopies(kept)) prepareCandidate(finish);
report('10,000 prepared, once (in slices, at rest)', null, [performance.now() - begun]);

const at = (own: readonly Finish[]) => offeredFinishes(own, shelf).finishes;
const library = at(project.library);
const opened = (surface: 'backsplash' | 'base-fronts' | 'wall') => {
  const ranking = rankSamples(project, 'our-floor', surface, { library });
  if (!ranking.ok) throw new Error(ranking.problem.text);
  const ordered = inOrder(ranking.value);
  for (let i = 0; i < Math.min(150, ordered.accepted.length); i++) acceptedRow(ordered, i);
  return ranking.value;
};
for (const surface of ['backsplash', 'base-fronts', 'wall'] as const) {
  median(`drawer of the ${surface}, 10,000 prepared (in slices)`, 100, 9, () => opened(surface));
}
const before = opened('wall');
const known = new Map(before.standings.map((one) => [one.candidate, one]));
median('  the same with one finish more', null, 9, () => {
  const own = { ...finishes[5]!, id: 'OWN-77' };
  const steps = rankInSteps(project, 'our-floor', 'wall', { library: [...library, own] }, known);
  let step = steps.next();
  for (; !step.done; step = steps.next());
  return step.value;
});

const laid = (one: Project) => {
  const next = withFinishOn(
    one,
    one.options[0]!,
    ['wall'],
    one.library.find(({ class: kind }) => kind === 'paint')!.id,
  );
  if (!next.ok) throw new Error(next.problem.text);
  return next.value;
};
const large: Project = { ...project, library: [...project.library, ...finishes] };
for (const [name, one] of [
  ['demo project', project],
  ['10,000 in the project', large],
] as const) {
  median(`a finish laid on the page: ${name}`, null, 9, () => laid(one));
  const pack = createFinishPacker();
  pack(one.library);
  median(`  sent to the worker and back out`, null, 9, () =>
    structuredClone({ ...laid(one), library: pack(one.library) }),
  );
}
median('  as before, the whole project each time', null, 5, () => structuredClone(large));
median('one finish taken in: what is offered, again', null, 9, () => at([...project.library, library.at(-1)!]));

// A library of which one finish changed, on its way to the worker.
const packShelf = createShelfPacker();
packShelf(shelf);
const other = { ...kept, finishes: kept.finishes.map((one, i) => (i === 77 ? { ...one, label: 'Another' } : one)) };
const shelves = [{ libraries: [other], putAside: [] }, shelf];
let turn = 0;
median('one finish of a library changed: sent to the worker', null, 9, () =>
  structuredClone(packShelf(shelves[turn++ % 2]!)),
);
median('  as before, the whole library each time', null, 5, () => structuredClone(shelf));
