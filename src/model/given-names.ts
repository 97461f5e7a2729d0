import type { Project } from './project';

/** The label of a finish without its code at the end. */
const withoutCode = (label: string, id: string): string =>
  label.endsWith(`, ${id}`) ? label.slice(0, -id.length - 2) : label;

/** Labels of finishes, whole and without their codes: names that people and suppliers gave. */
export const finishNames = (library: Project['library']): readonly string[] =>
  library.flatMap(({ id, label }) => [label, withoutCode(label, id)]);

/** All other names people gave in a project; of settings also as they stand in the middle of a sentence. */
export const givenNames = ({ name, options, settings, lamps = [], looks = [] }: Project): readonly string[] => [
  name,
  ...options.map((option) => option.name),
  ...settings.flatMap((setting) => [setting.name, setting.name.toLowerCase()]),
  ...lamps.map(({ label }) => label),
  ...looks.map((look) => look.name),
];
