import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { expect, it } from 'vitest';
import { applyCommand } from '../../src/model/apply-command';
import { JOINT_MM } from '../../src/model/laying';
import type { Laying } from '../../src/model/project';
import { LayingForm } from '../../src/ui/drawer/LayingForm';
import { jointOf, mmText } from '../../src/ui/drawer/mm-text';
import { terrace } from '../ui/terrace';

// The form of a tile's laying kept the joint that was undone, showed a grout as chosen where none was set, and allowed
// other joints than the document.

const project = terrace();
const grouts = project.library.filter((finish) => finish.class === 'grout');
const tile = project.library.find((finish) => finish.id === 'TL-01')!;
const form = (laying: Laying) =>
  renderToStaticMarkup(
    createElement(LayingForm, { finish: tile, surface: 'backsplash', laying, grouts, onLaying: () => {} }),
  );

it('shows what was typed until the document has another joint', () => {
  const typed = { text: '2.', mm: 2 };
  expect(mmText(typed, 2)).toBe('2.');
  expect(mmText(typed, 3)).toBe('3');
  expect(mmText({ text: '200', mm: 3 }, 3)).toBe('200');
  expect(mmText(null, undefined)).toBe('');
});

it('shows no grout as chosen while none is set', () => {
  expect(form({ layout: 'stack' })).toMatch(/<option value="" selected="">None yet<\/option>/);
  const set = form({ layout: 'stack', joint_mm: 3, grout: grouts[0]!.id });
  expect(set).not.toContain('None yet');
  expect(set).toContain(`<option value="${grouts[0]!.id}" selected="">`);
});

it('takes the same joints in the form and in the document: never under 1/16 in (ANSI A108.02), and at most 20 mm', () => {
  expect(JOINT_MM[0]).toBeCloseTo(25.4 / 16, 1);
  for (const joint_mm of [0, 1.5, 1.6, 2, 20, 20.1]) {
    const laying = { layout: 'stack', joint_mm, grout: grouts[0]!.id } as const;
    const { ok } = applyCommand(project, { kind: 'set-laying', option: 'our-floor', surface: 'backsplash', laying });
    expect([joint_mm, jointOf(String(joint_mm)) !== null]).toEqual([joint_mm, ok]);
  }
  expect(jointOf('')).toBeNull();
  expect(jointOf('two')).toBeNull();
});
