import { describe, expect, it } from 'vitest';
import { scheduleOf } from '../../src/kitchen/schedule/schedule-of';
import type { Kitchen } from '../../src/model/kitchen';
import { kitchenFor, usualRoom } from '../../src/model/new-kitchen';
import { LAYOUTS as DRAFTS } from '../../src/model/new-kitchen/layout-drafts';
import type { Project } from '../../src/model/project';
import { holds, middleOf, overlap } from '../../src/ui/drawings/boxes';
import { sentencesOf } from '../../src/ui/drawings/drawing-words';
import { sizeOf } from '../../src/ui/drawings/sheet-layout';
import { CAPITAL } from '../../src/ui/drawings/sizes';
import { tagsDrawn } from '../../src/ui/drawings/tagged';
import { taggedDrawings } from '../../src/ui/drawings/tagged-drawings';
import { LAYOUTS } from '../kitchen/layouts';
import { terrace } from './terrace';

const demo = terrace();

/** Another finish on every surface of a class, so that each surface is an item of its own: as many tags as there may be. */
function apart(project: Project): Project {
  const [option] = project.options;
  const library = [...project.library];
  const scheme = Object.fromEntries(
    Object.entries(option!.scheme).map(([surface, placement]) => {
      const finish = library.find(({ id }) => id === placement.finish)!;
      const own = { ...finish, id: `${finish.id} ${surface}` };
      library.push(own);
      return [surface, { ...placement, finish: own.id }];
    }),
  ) as Project['options'][number]['scheme'];
  return { ...project, library, options: [{ ...option!, scheme }] };
}

const KITCHENS: readonly (readonly [string, Kitchen])[] = [
  ...DRAFTS.flatMap((layout) =>
    (['eu', 'us'] as const).map(
      (region) => [`${layout}, ${region}`, kitchenFor(layout, region, usualRoom(layout, region))!] as const,
    ),
  ),
  ...Object.entries(LAYOUTS),
];

describe.each(KITCHENS)('the tagged drawings of a kitchen: %s', (_name, kitchen) => {
  for (const project of [demo, apart(demo)]) {
    const { rows } = scheduleOf({ ...project, kitchen }, project.options[0]!, []);
    const unit = kitchen.region === 'us' ? 'in' : 'mm';
    const { drawings } = taggedDrawings(kitchen, rows, unit);
    const kind = project === demo ? 'as in the demo' : 'with a finish for each surface';

    it(`have the tag of every item, ${kind}`, () => {
      const drawn = tagsDrawn(drawings);
      expect(rows.map(({ id }) => id).filter((id) => !drawn.has(id))).toEqual([]);
      const said = drawings.flatMap((one) => sentencesOf(one, rows, unit)).join(' ');
      for (const { id } of rows) expect(said).toMatch(new RegExp(`\\b${id}\\b`));
    });

    it(`keep tags apart and within the drawing, ${kind}`, () => {
      for (const { layout, tags } of drawings) {
        const whole = { x: 0, y: 0, width: layout.width, height: layout.height };
        for (const [i, { box, leader, tags: own }] of tags.entries()) {
          expect(holds(whole, box), `${layout.drawing.id} ${own}`).toBe(true);
          for (const other of tags.slice(i + 1)) expect(overlap(box, other.box), `${own} ${other.tags}`).toBe(false);
          if (!leader) continue;
          const [x, y] = leader[1];
          const [middle, height] = middleOf(box);
          expect(Math.abs(x - middle)).toBeLessThanOrEqual(box.width / 2 + 1e-6);
          expect(Math.abs(y - height)).toBeLessThanOrEqual(box.height / 2 + 1e-6);
        }
      }
    });

    it(`go on A4 and on Letter, ${kind}`, () => {
      for (const { layout } of drawings) {
        const [width, height] = sizeOf(layout);
        expect(width).toBeLessThanOrEqual(174);
        expect(height).toBeLessThanOrEqual(212);
      }
    });
  }
});

it('are not placed anew for a schedule that draws the same, and are for another', () => {
  const rows = () => scheduleOf(demo, demo.options[0]!, []).rows;
  const first = taggedDrawings(demo.kitchen, rows(), 'mm');
  expect(taggedDrawings(demo.kitchen, rows(), 'mm')).toBe(first);
  expect(taggedDrawings(demo.kitchen, rows().slice(1), 'mm')).not.toBe(first);
});

it('has letters at least 2.2 mm high on paper', () => {
  expect(CAPITAL).toBeGreaterThanOrEqual(2.2);
});
