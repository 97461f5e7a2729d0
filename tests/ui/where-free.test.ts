import { expect, it } from 'vitest';
import { checkKitchen } from '../../src/model/check-kitchen';
import { newFixture } from '../../src/ui/room/new-fixture';
import { whereFree } from '../../src/ui/room/where-free';
import { terrace } from './terrace';

it.each(['downlight', 'panel', 'pendant', 'strip', 'hood', 'under-cabinet'] as const)(
  'a new %s fits the demo kitchen beside the lamps it has, or says why not',
  (kind) => {
    const { kitchen } = terrace();
    const made = whereFree(kitchen, newFixture(kind, 'new'));
    const problems = checkKitchen({ ...kitchen, fixtures: [...kitchen.fixtures, made] }, 'kitchen');
    // The hood and the wall units have room for one row of lamps.
    if (kind === 'hood' || kind === 'under-cabinet') expect(problems.length).toBeGreaterThan(0);
    else expect(problems).toEqual([]);
  },
);
