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

/** Gloss at 60 degrees among the PhysicalAttributes, however deep; one that says another angle does not count. */
export function glossOf(object: XmlElement): readonly (readonly [Field, string])[] {
  const look = (element: XmlElement): string | null => {
    const angle = /(\d{2})/.exec(
      `${element.name} ${element.attributes.get('Angle') ?? ''} ${element.attributes.get('Geometry') ?? ''}`,
    )?.[1];
    const value = element.text || (element.attributes.get('Value') ?? '');
    if (/gloss/i.test(element.name) && (angle ?? '60') === '60' && !Number.isNaN(cellNumber(value))) return value;
    for (const child of element.children) {
      const found = look(child);
      if (found !== null) return found;
    }
    return null;
  };
  const attributes = childOf(object, 'PhysicalAttributes');
  const gloss = attributes ? look(attributes) : null;
  return gloss === null ? [] : [['gloss_60', gloss]];
}

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
