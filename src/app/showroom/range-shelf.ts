import type { LibraryShelf } from '../keeping/library-shelf';
import type { ShowroomRules } from './showroom-state';

/** The kept libraries that customers of a showroom choose from, and no others. */
export const rangeShelf = (
  shelf: Pick<LibraryShelf, 'list' | 'onChange'>,
  { range }: ShowroomRules,
): Pick<LibraryShelf, 'list' | 'onChange'> => ({
  list: async () => (await shelf.list()).filter(({ id }) => range.libraries.includes(id)),
  onChange: shelf.onChange,
});
