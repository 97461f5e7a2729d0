import { surfaceName } from '../engine/judge/surface-words';
import type { Problem } from '../engine/result';
import { SURFACES, type SurfaceId } from '../engine/surface';
import { EMPTY, emptySurfaces, isEmpty } from '../model/empty-surface';
import type { Option, Placement, Project, ProjectDocument, Revision, Scheme } from '../model/project';

/** A scheme as it stands in a file: where a surface is absent or null, nothing is chosen for it yet. */
type SchemeInFile = { readonly [S in SurfaceId]?: Placement | null | undefined };

/** A project without log and revisions as it stands in a file. */
type DocumentInFile = Omit<ProjectDocument, 'options'> & {
  readonly options: readonly (Omit<Option, 'scheme'> & { readonly scheme: SchemeInFile })[];
};

/** A project as it stands in a file. */
export type ProjectInFile = DocumentInFile & {
  readonly log?: Project['log'] | undefined;
  readonly revisions?: readonly (Omit<Revision, 'document'> & { readonly document: DocumentInFile })[] | undefined;
};

/** The document of a file: every surface has its place, if only an empty one. */
export const withEmptySurfaces = (project: ProjectInFile): Project => mapDocuments(project, filled) as Project;

/** The same for the file: empty surfaces are left out. */
export const withoutEmptySurfaces = (project: Project): ProjectInFile => mapDocuments(project, thinned);

/** The project and every frozen copy in it, each changed alike. */
function mapDocuments(
  project: ProjectInFile,
  change: (options: DocumentInFile['options']) => DocumentInFile['options'],
) {
  const options = change(project.options);
  if (!project.revisions) return { ...project, options };
  const revisions = project.revisions.map((revision) => ({
    ...revision,
    document: { ...revision.document, options: change(revision.document.options) },
  }));
  return { ...project, options, revisions };
}

const filled = (options: DocumentInFile['options']): readonly Option[] =>
  options.map((option) => ({
    ...option,
    scheme: Object.fromEntries(SURFACES.map((surface) => [surface, option.scheme[surface] ?? EMPTY])) as Scheme,
  }));

const thinned = (options: DocumentInFile['options']): DocumentInFile['options'] =>
  options.map((option) => ({
    ...option,
    scheme: Object.fromEntries(
      Object.entries(option.scheme).filter(([, placement]) => placement && !isEmpty(placement)),
    ),
  }));

/** Says of each option which of its surfaces nothing is chosen for. */
export const emptyNotices = ({ options }: Project): readonly Problem[] =>
  options.flatMap((option, i) => {
    const empty = emptySurfaces(option);
    if (empty.length === 0) return [];
    const path = `options[${i}].scheme`;
    const names = empty.length === SURFACES.length ? 'any surface' : empty.map(inWords).join(', ');
    return [
      {
        code: 'nothing-chosen',
        text:
          `${path}: nothing is chosen yet for ${names} of "${option.name}"; nothing is said of ${empty.length === 1 ? 'it' : 'them'}, ` +
          `and the room is lit and drawn as if plain gray lay there.`,
        at: { path },
        remedy: 'Nothing to do, unless a surface was left out by mistake.',
      },
    ];
  });

const inWords = (surface: SurfaceId): string => surfaceName(surface).toLowerCase();
