import { expect, it } from 'vitest';
import { migrateProject } from '../../src/io/migrate-project';
import type { Kitchen } from '../../src/model/kitchen';
import { version1 } from '../io/version-1';
import { brokenInvariants } from './invariants';

it('can be built where the window of version 1 reaches the wall units, whose sides take the end of the sill board', () => {
  const { window, ...kitchen } = JSON.parse(version1()).kitchen;
  for (const sill of [1050, 1395, 1400, 1420, 1500]) {
    const beside = { ...window, center: 3670 - 900, sill, height: Math.min(1200, 2500 - sill) };
    const value = { version: 1, kitchen: { ...kitchen, window: beside }, settings: [] };
    const migrated = (migrateProject(value) as { kitchen: Kitchen }).kitchen;
    expect(brokenInvariants(migrated, 60)).toEqual([]);
  }
});
