import type { XmlElement } from '../xml-reader';

/** Namespace of the core of CxF3 (ISO 17972-1). */
export const CXF3 = 'http://colorexchangeformat.com/CxF3-core';

/** Children of that name in the namespace of CxF3; extensions have namespaces of their own. */
export const childrenOf = ({ children }: XmlElement, name: string): readonly XmlElement[] =>
  children.filter((child) => child.name === name && child.uri === CXF3);

export const childOf = (within: XmlElement | undefined, name: string): XmlElement | undefined =>
  within?.children.find((child) => child.name === name && child.uri === CXF3);

/** Text of a child as one line; '' where there is none. */
export const textOf = (within: XmlElement | undefined, name: string): string =>
  childOf(within, name)?.text.replace(/\s+/g, ' ') ?? '';

/** All texts and values of attributes within an element, its names too. */
export const allWords = (element: XmlElement): string =>
  [element.name, element.text, ...element.attributes.values(), ...element.children.map(allWords)].join(' ');
