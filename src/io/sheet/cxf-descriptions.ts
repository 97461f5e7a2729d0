import { cellNumber } from '../table-cells';
import type { XmlElement } from '../xml-reader';
import { childOf, childrenOf, textOf } from './cxf-elements';
import { meaningOfHeading } from './field-of-heading';
import type { Field } from './types';

/** Of tags, what they may say; colors are not taken from them. */
const NO_TAG = /^(lab|lch|xyz|rgb)_|^nm:|^(illuminant|observer_deg|specular|hex|munsell)$/;
const MOST_TAGS = 64;

/** What an object is called; its Id is its code unless a tag says one. */
export function identity(object: XmlElement): readonly (readonly [Field, string])[] {
  const id = object.attributes.get('Id')?.trim() ?? '';
  const comment = textOf(object, 'Comment');
  return [
    ['code', id],
    ['name', object.attributes.get('Name')?.trim() || id],
    ...(comment ? [['note', comment] as const] : []),
  ];
}

/** Gloss of an object: cells of that at 60 degrees, and the angles of others. */
interface CxfGloss {
  readonly cells: readonly (readonly [Field, string])[];
  readonly otherAngles: readonly string[];
}

/**
 * Gloss among the PhysicalAttributes, however deep; that at another angle than 60 degrees does not count. The angle may stand in the name of an
 * element, in its attributes or in elements for angle or geometry beside the value or around it; files differ, and the schema of the
 * standard is known here from memory only.
 */
export function glossOf(object: XmlElement): CxfGloss {
  const otherAngles = new Set<string>();
  const look = (element: XmlElement, around: string | null): string | null => {
    const angle = angleOf(element) ?? around;
    const value = element.text || (element.attributes.get('Value') ?? valueIn(element));
    if (/gloss/i.test(element.name) && !IS_ANGLE.test(element.name) && !Number.isNaN(cellNumber(value))) {
      if ((angle ?? '60') === '60') return value;
      otherAngles.add(angle!);
      return null;
    }
    for (const child of element.children) {
      const found = look(child, /gloss/i.test(element.name) ? angle : around);
      if (found !== null) return found;
    }
    return null;
  };
  const attributes = childOf(object, 'PhysicalAttributes');
  const gloss = attributes ? look(attributes, null) : null;
  return { cells: gloss === null ? [] : [['gloss_60', gloss]], otherAngles: [...otherAngles] };
}

const IS_ANGLE = /angle|geometry/i;

function angleOf(element: XmlElement): string | null {
  const own = [
    element.name,
    ...[...element.attributes].flatMap(([name, value]) => (IS_ANGLE.test(name) ? [value] : [])),
  ];
  const inside = element.children.flatMap((child) => (IS_ANGLE.test(child.name) ? [child.text] : []));
  return /(?<!\d)(20|45|60|75|85)(?!\d)/.exec([...own, ...inside].join(' '))?.[1] ?? null;
}

/** "<Gloss><Geometry>60</Geometry><Value>42</Value></Gloss>". */
const valueIn = ({ children }: XmlElement): string =>
  children.find(({ name }) => /^(?:value|units?|gu|glossvalue|reading)$/i.test(name))?.text ?? '';

/** What tags say by their names, which mean what headings of a table do; the first of a name counts. */
export function taggedCells(object: XmlElement): {
  readonly known: ReadonlyMap<Field, string>;
  readonly others: ReadonlyMap<string, string>;
} {
  const known = new Map<Field, string>();
  const others = new Map<string, string>();
  const tags = childrenOf(object, 'TagCollection').flatMap((collection) => childrenOf(collection, 'Tag'));
  for (const tag of tags.slice(0, MOST_TAGS)) {
    const name = tag.attributes.get('Name')?.trim() ?? '';
    const value = (tag.attributes.get('Value') ?? tag.text).trim();
    if (name === '' || value === '') continue;
    const field = meaningOfHeading(name)?.field ?? null;
    if (!field || NO_TAG.test(field)) {
      if (!others.has(name)) others.set(name, value);
    } else if (!known.has(field)) known.set(field, value);
  }
  return { known, others };
}
