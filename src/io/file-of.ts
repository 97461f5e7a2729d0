import { typeOfFile } from './look-file';

/** What a file is for, told by its name and, for JSON, by what it says of itself; null for what this program opens nowhere. */
export type FilePurpose = 'project' | 'look' | 'finishes' | 'beam' | 'lamp' | 'picture';

/** Maps, for a name may be that of a member every object has. */
const ENDINGS = new Map<string, FilePurpose>(
  Object.entries({
    csv: 'finishes',
    tsv: 'finishes',
    txt: 'finishes',
    cgats: 'finishes',
    cxf: 'finishes',
    xml: 'finishes',
    icc: 'finishes',
    icm: 'finishes',
    ies: 'beam',
    spdx: 'lamp',
    sp: 'lamp',
    jpg: 'picture',
    jpeg: 'picture',
    png: 'picture',
    webp: 'picture',
  } as const),
);

const TYPES = new Map<string | null, FilePurpose>([
  ['upstand-look', 'look'],
  ['upstand-library', 'finishes'],
]);

/** By the name alone; 'json' where the file itself has to say. */
export function purposeOfName(name: string): FilePurpose | 'json' | null {
  const ending = /\.([^.]+)$/.exec(name)?.[1]?.toLowerCase() ?? '';
  return ending === 'json' ? 'json' : (ENDINGS.get(ending) ?? null);
}

/** By what JSON says it is; anything else is opened as a project, which tells what is wrong with it. */
export const purposeOfJson = (text: string): FilePurpose => TYPES.get(typeOfFile(text)) ?? 'project';
