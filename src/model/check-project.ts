import type { Problem } from '../engine/result';
import { SURFACES } from '../engine/surface';
import { checkBeam } from './check-beam';
import { checkDaylight } from './check-daylight';
import { checkFinish } from './check-finish';
import { checkKitchen } from './check-kitchen';
import { checkLamp } from './check-lamp';
import { checkLogEntry, checkRevision } from './check-log';
import { checkLook } from './check-look';
import { checkNumber, checkText, checkUnique } from './check-number';
import { checkYear } from './check-year';
import { isEmpty } from './empty-surface';
import { JOINT_MM, SLAB_SHIFT_MM } from './laying';
import { checkAssumptions, checkExtras, checkItems, checkJob, checkSamples } from './order/check-order';
import {
  type Finish,
  type GroupSetting,
  LAMP_GROUPS,
  type Option,
  type Placement,
  type Project,
  type ProjectDocument,
  type Setting,
} from './project';
import { lightOfProject } from './project-lights';

/** Everything that is wrong with a project of the right shape: values, references, ids. Empty when it is sound. */
export const checkProject = (project: Project): readonly Problem[] => [
  ...checkDocument(project),
  ...(project.log ?? []).flatMap((entry, i) => checkLogEntry(entry, `log[${i}]`)),
  ...checkUnique(ids(project.revisions ?? []), 'revisions'),
  ...(project.revisions ?? []).flatMap((revision, i) => [
    ...checkRevision(revision, `revisions[${i}]`),
    ...checkDocument(revision.document).map((problem) => inRevision(problem, revision.id, `revisions[${i}].document`)),
  ]),
];

/** The same of a frozen copy, told as one. */
const inRevision = (problem: Problem, id: string, path: string): Problem => ({
  ...problem,
  text: `In revision ${id}: ${problem.text}`,
  at: { ...problem.at, path: problem.at?.path ? `${path}.${problem.at.path}` : path },
});

function checkDocument(project: ProjectDocument): readonly Problem[] {
  const library = libraryOf(project);
  return [
    ...checkText(project.id, 'id'),
    ...checkText(project.name, 'name'),
    ...(project.year_built === undefined ? [] : checkYear(project.year_built, 'year_built')),
    ...checkKitchen(project.kitchen, 'kitchen'),
    ...checkUnique(ids(project.settings), 'settings'),
    ...checkUnique(ids(project.lamps ?? []), 'lamps'),
    ...checkUnique(ids(project.beams ?? []), 'beams'),
    ...checkUnique(ids(project.library), 'library'),
    ...checkUnique(ids(project.options), 'options'),
    ...checkUnique(ids(project.looks ?? []), 'looks'),
    ...checkNotEmpty(project.settings, 'settings', 'setting'),
    ...checkNotEmpty(project.options, 'options', 'option'),
    ...project.settings.flatMap((setting, i) => checkSetting(project, setting, `settings[${i}]`)),
    ...(project.lamps ?? []).flatMap((lamp, i) => checkLamp(lamp, `lamps[${i}]`)),
    ...(project.beams ?? []).flatMap((beam, i) => checkBeam(beam, `beams[${i}]`)),
    ...checkFixtureBeams(project, 'kitchen'),
    ...project.library.flatMap((finish, i) => checkFinish(finish, `library[${i}]`)),
    ...project.options.flatMap((option, i) => checkOption(option, library, `options[${i}]`)),
    ...(project.looks ?? []).flatMap((look, i) => checkLook(look, `looks[${i}]`)),
    ...(project.job ? checkJob(project.job, 'job') : []),
    ...(project.quantities ? checkAssumptions(project.quantities, 'quantities') : []),
    ...checkSamples(project.samples ?? [], 'samples'),
  ];
}

/** The finishes of a project by id. */
export const libraryOf = (project: Pick<Project, 'library'>): ReadonlyMap<string, Finish> =>
  new Map(project.library.map((finish) => [finish.id, finish]));

/** What is wrong with a setting: names, levels, lights. */
const checkSetting = (project: Pick<Project, 'lamps'>, setting: Setting, path: string): readonly Problem[] => [
  ...checkText(setting.id, `${path}.id`),
  ...checkText(setting.name, `${path}.name`),
  ...(setting.daylight ? checkDaylight(setting.daylight, `${path}.daylight`, project) : []),
  ...LAMP_GROUPS.flatMap((group) => checkGroup(project, setting.lamps[group], `${path}.lamps.${group}`)),
];

/** Fixtures whose beam is none of the project's. */
export function checkFixtureBeams(
  { kitchen, beams }: Pick<Project, 'kitchen' | 'beams'>,
  path: string,
): readonly Problem[] {
  return kitchen.fixtures.flatMap(({ beam }, i) => {
    if (beam.kind !== 'file' || beams?.some(({ id }) => id === beam.beam)) return [];
    const at = `${path}.fixtures[${i}].beam.beam`;
    return [
      {
        code: 'unknown-beam',
        text: `${at}: there is no beam "${beam.beam}" in the project.`,
        at: { path: at },
        remedy: "Open the lamp's IES file again, or choose another beam.",
      },
    ];
  });
}

/** What is wrong with one group of lamps of a setting of the project. */
export function checkGroup(project: Pick<Project, 'lamps'>, group: GroupSetting, path: string): readonly Problem[] {
  const problems = [...checkNumber(group.level, [0, 1, ''], `${path}.level`)];
  // A lamp of the project that is itself wrong is told of where it stands, once.
  if (project.lamps?.some(({ id }) => id === group.light)) return problems;
  const light = lightOfProject(project, group.light);
  if (!light.ok) {
    const at = `${path}.light`;
    problems.push({ ...light.problem, text: `${at}: ${light.problem.text}`, at: { path: at } });
  }
  return problems;
}

/** What is wrong with an option: names, unknown finishes, joints and grouts. */
const checkOption = (option: Option, library: ReadonlyMap<string, Finish>, path: string): readonly Problem[] => [
  ...checkText(option.id, `${path}.id`),
  ...checkText(option.name, `${path}.name`),
  ...SURFACES.flatMap((surface) => checkPlacement(option.scheme[surface], library, `${path}.scheme.${surface}`)),
  ...checkItems(option.items ?? [], `${path}.items`),
  ...checkExtras(option.extras ?? [], `${path}.extras`),
];

/** What is wrong with one placement. */
export function checkPlacement(
  placement: Placement,
  library: ReadonlyMap<string, Finish>,
  path: string,
): readonly Problem[] {
  if (isEmpty(placement)) return placement.state === 'open' ? [] : [notChosen(path)];
  const problems: Problem[] = [];
  const { grout, joint_mm, slab } = placement.laying;
  const finish = library.get(placement.finish);
  if (!finish) problems.push(unknownFinish(placement.finish, `${path}.finish`));
  if (finish?.class === 'grout') {
    problems.push({
      code: 'grout-alone',
      text: `${path}.finish: ${finish.label} is a grout and cannot be laid by itself.`,
      at: { path: `${path}.finish` },
      remedy: 'Name a tile here and the grout under laying.grout.',
    });
  }
  if (joint_mm !== undefined) problems.push(...checkNumber(joint_mm, JOINT_MM, `${path}.laying.joint_mm`));
  if (slab) problems.push(...checkNumber(slab.shift_mm, SLAB_SHIFT_MM, `${path}.laying.slab.shift_mm`));
  if (grout !== undefined) {
    const found = library.get(grout);
    if (!found) problems.push(unknownFinish(grout, `${path}.laying.grout`));
    else if (found.class !== 'grout') {
      problems.push({
        code: 'not-a-grout',
        text: `${path}.laying.grout: ${found.label} is no grout.`,
        at: { path: `${path}.laying.grout` },
        remedy: 'Name a finish of the class grout.',
      });
    }
  }
  return problems;
}

const notChosen = (path: string): Problem => ({
  code: 'nothing-chosen',
  text: `${path}: nothing is chosen here yet, so it can only be open.`,
  at: { path },
  remedy: 'Choose a finish first.',
});

export const unknownFinish = (id: string, path: string): Problem => ({
  code: 'unknown-finish',
  text: `${path}: there is no finish "${id}" in the library.`,
  at: { path },
  remedy: 'Add the finish to the library, or name one that is there.',
});

const ids = (list: readonly { readonly id: string }[]): readonly string[] => list.map((one) => one.id);

function checkNotEmpty(list: readonly unknown[], path: string, what: string): readonly Problem[] {
  if (list.length > 0) return [];
  return [{ code: 'empty-list', text: `${path} is empty.`, at: { path }, remedy: `Give at least one ${what}.` }];
}
