import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseProject } from '../../src/io/project-file';
import { layoutOf } from '../../src/model/change-layout';
import { clearanceHints } from '../../src/model/clearances';
import type { Kitchen } from '../../src/model/kitchen';
import { planRows } from '../../src/model/layout/plan-rows';
import { LAYOUTS } from '../../src/model/new-kitchen/layout-drafts';
import { demoProject } from '../io/demo';
import { brokenInvariants } from './invariants';

const scene = (layout: string): Kitchen => JSON.parse(readFileSync(`scenes/${layout}.json`, 'utf8'));

it('has a scene of every layout, and no other', () => {
  expect(readdirSync('scenes').sort()).toEqual(LAYOUTS.map((layout) => `${layout}.json`).sort());
});

describe.each(LAYOUTS)('the scene %s', (layout) => {
  const kitchen = scene(layout);

  it('opens as the kitchen of a project, without a word', () => {
    const text = JSON.stringify({ ...demoProject(), kitchen });
    expect(parseProject(text)).toEqual({ ok: true, value: { ...demoProject(), kitchen } });
  });

  it('is of its layout, has tall units, a window, a hood, lamps on ceiling and counter, a dishwasher', () => {
    expect(layoutOf(kitchen)).toBe(layout);
    const { runs } = planRows(kitchen);
    expect(runs.flatMap(({ tall }) => tall.flatMap(({ units }) => units)).length).toBeGreaterThan(0);
    expect(kitchen.openings.length).toBeGreaterThan(0);
    expect(kitchen.cooktop.hood).not.toBe('none');
    expect(kitchen.fixtures.map(({ group }) => group)).toEqual(expect.arrayContaining(['ceiling', 'under-cabinet']));
    expect(runs.flatMap(({ base }) => base.units).filter(({ kind }) => kind === 'dishwasher')).toHaveLength(1);
  });

  it('leaves the aisles planners ask for', () => {
    const aisles = clearanceHints(kitchen).filter(({ code }) => code === 'work-aisle' || code === 'walkway');
    expect(aisles.length).toBeGreaterThan(0);
    expect(aisles.filter(({ level }) => level === 'short')).toEqual([]);
  });

  it('is closed and whole', () => {
    expect(brokenInvariants(kitchen, 60)).toEqual([]);
  });
});
