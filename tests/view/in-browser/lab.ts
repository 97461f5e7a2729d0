import { afterAll, beforeAll } from 'vitest';
import { openPictureLab, type PictureLab } from '../browser';

/** The page that all tests of the picture drive; what it needs to open would take longer than most of them. */
export let lab: PictureLab;

beforeAll(async () => {
  lab = await openPictureLab();
}, 120_000);
afterAll(() => lab?.close());
