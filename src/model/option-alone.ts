import { type Finish, LAMP_GROUPS, type Option, type Project } from './project';

/**
 * A project of one option with all its picture and findings rest on: kitchen, settings, who uses it, the lamps, beams and finishes in use.
 * What is meant for oneself stays behind (notes, log, revisions, looks, tags, what is known of job, samples and orders), as do other options. The id is one of its own.
 */
export function optionAlone(project: Project, option: Option): Project {
  const {
    log: _,
    revisions: _frozen,
    looks: _looks,
    job: _job,
    samples: _samples,
    quantities: _own,
    ...rest
  } = project;
  const { note: _note, items: _items, extras: _extras, ...alone } = option;
  const { lamps, beams, ...kept } = rest;
  const lights = lightsOf(project);
  const beamIds = new Set(project.kitchen.fixtures.map(({ beam }) => (beam.kind === 'file' ? beam.beam : '')));
  const lampsLeft = lamps?.filter(({ id }) => lights.has(id)) ?? [];
  const beamsLeft = beams?.filter(({ id }) => beamIds.has(id)) ?? [];
  const laid = new Set(Object.values(option.scheme).flatMap(({ finish, laying }) => [finish, laying.grout]));
  return {
    ...kept,
    id: aloneId(project.id, option.id),
    note: '',
    ...(lampsLeft.length > 0 && { lamps: lampsLeft }),
    ...(beamsLeft.length > 0 && { beams: beamsLeft }),
    library: project.library.filter(({ id }) => laid.has(id)).map(withoutOwnWords),
    options: [alone],
  };
}

const lightsOf = ({ settings }: Project): ReadonlySet<string | undefined> =>
  new Set(
    settings.flatMap(({ daylight, lamps }) => [daylight?.light, ...LAMP_GROUPS.map((group) => lamps[group].light)]),
  );

/** Tags and the kept library a finish was taken from mean something to whoever has them. */
function withoutOwnWords({ tags: _, origin: _origin, ...finish }: Finish): Finish {
  return finish;
}

/** The same however often it is passed on: what a link brought, and a copy of that, keep the id the first link gave. */
function aloneId(project: string, option: string): string {
  const tail = `-${option}`;
  const plain = project.replace(/(-copy(-\d+)?)+$/, '');
  return plain.endsWith(tail) ? plain : `${project}${tail}`;
}
