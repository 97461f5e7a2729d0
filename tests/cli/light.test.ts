import { existsSync, readFileSync, symlinkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run';
import type { ExportedRoom } from '../../src/kitchen/study/exported-room';
import type { StandReport } from '../../src/kitchen/study/stand-report';
import { DEMO_PATH } from '../io/demo';
import { fileWith } from './upstand';

const target = fileWith('room.json', '');
const IN_THE_EVENING = [DEMO_PATH, '--option', 'our-floor', '--setting', 'evening'] as const;

describe('light --stand --export-room', () => {
  let report: StandReport & { exported_room: { file: string; quads: number; zones: number } };
  let room: ExportedRoom;
  beforeAll(() => {
    const { exit, out } = run(['light', ...IN_THE_EVENING, '--stand', 'WD-01', '--export-room', target, '--json']);
    expect(exit).toBe(0);
    report = JSON.parse(out);
    room = JSON.parse(readFileSync(target, 'utf8'));
  });

  it('gives every surface, too, as without a sample', () => {
    expect(report.surfaces!.map(({ surface }) => surface)).toContain('base-fronts');
    for (const { lux_mean, lux_min, spectrum } of report.surfaces!) {
      expect(lux_mean).toBeGreaterThanOrEqual(lux_min);
      expect(spectrum).toHaveLength(81);
    }
  });

  it('reads the sample flat and upright', () => {
    const { stand } = report;
    expect(stand).toMatchObject({ finish: 'WD-01' });
    expect(stand!.flat.lux).toBeGreaterThan(stand!.upright.lux);
    for (const place of [stand!.flat, stand!.upright]) {
      expect(place.parts.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    }
  });

  it('writes the room with its quads, emitters and zones', () => {
    expect(Object.keys(room)).toEqual(['note', 'quads', 'zones']);
    expect(report.exported_room).toEqual({ file: target, quads: room.quads.length, zones: room.zones.length });
    for (const { v, rgb, emit } of room.quads) {
      expect(v).toHaveLength(4);
      // A rectangle: the fourth corner follows from the other three, to the written micrometre.
      for (const k of [0, 1, 2] as const) expect(v[0][k] + v[2][k]).toBeCloseTo(v[1][k] + v[3][k], 5);
      for (const rho of rgb) expect(rho >= 0 && rho < 1).toBe(true);
      if (emit > 0) expect(rgb).toEqual([0, 0, 0]);
    }
    expect(room.quads.some(({ emit }) => emit > 0)).toBe(true);
    const named = room.zones.map(({ name }) => name);
    for (const name of ['counter', 'island-counter', 'floor', 'base-fronts', 'wall', 'ceiling']) {
      expect(named).toContain(name);
    }
  });

  it('closes the room: what the fronts see of it has no way out', () => {
    // The flux through a closed surface of unit normals is none: the sum of area times normal is zero (divergence theorem).
    const sum = [0, 0, 0];
    for (const { v } of room.quads) {
      const [u, w] = [1, 3].map((i) => [0, 1, 2].map((k) => v[i]![k]! - v[0]![k]!));
      for (const k of [0, 1, 2]) {
        const [b, c] = [(k + 1) % 3, (k + 2) % 3];
        sum[k]! += u![b]! * w![c]! - u![c]! * w![b]!;
      }
    }
    for (const value of sum) expect(Math.abs(value)).toBeLessThan(1e-4);
  });

  it('sends no more than it is sent: each zone gets light, and its bands differ by the finishes alone', () => {
    for (const { upstand } of room.zones) {
      for (const band of upstand) expect(band).toBeGreaterThan(1);
      expect(Math.max(...upstand) / Math.min(...upstand)).toBeLessThan(2);
    }
  });
});

// Each message has to name what is wrong and what to do.
it.each<[string, readonly string[], readonly RegExp[]]>([
  [
    'a finish there is none of',
    ['--stand', 'XX-99'],
    [/terrace\.project\.json: .*no finish "XX-99"/, /Name one of: PT-01, .*PT-08 and \d+ more\./],
  ],
  ['no finish named', ['--stand'], [/--stand/, /Usage: upstand light PROJECT/]],
  ['no file named', ['--export-room'], [/--export-room needs a value/, /Usage/]],
  ['an option in place of a finish', ['--stand', '--json'], [/--stand needs a value/, /Usage/]],
  ['an option in place of a file', ['--export-room', '--json'], [/--export-room needs a value/, /Usage/]],
  [
    'a folder in place of a file',
    ['--stand', 'WD-01', '--export-room', dirname(target)],
    [/cannot be written: it is a folder/, /Name a file/],
  ],
  [
    'a file in no folder',
    ['--stand', 'WD-01', '--export-room', join(dirname(target), 'nowhere', 'room.json')],
    [/room\.json: .*no such folder/, /Name a file/],
  ],
])('refuses %s', (_, args, expected) => {
  const { exit, out, messages } = run(['light', ...IN_THE_EVENING, ...args]);
  expect(exit).toBe(2);
  expect(out).toBe('');
  for (const pattern of expected) expect(messages).toMatch(pattern);
});

it('does not write over the project it reads, whatever it is called', () => {
  const text = readFileSync(DEMO_PATH, 'utf8');
  const project = fileWith('mine.json', text);
  const link = join(dirname(project), 'link.json');
  if (!existsSync(link)) symlinkSync(project, link);
  for (const [read, written] of [
    [project, project],
    [project, join(dirname(project), '.', 'nowhere', '..', 'mine.json')],
    [project, link],
    [link, project],
  ] as const) {
    const { exit, messages } = run(['light', read, '--export-room', written]);
    expect(exit).toBe(2);
    expect(messages).toContain('This is the file that was read; it would be lost. Name another file to write to.');
  }
  expect(readFileSync(project, 'utf8')).toBe(text);
});
