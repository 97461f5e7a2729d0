import { describe, expect, it } from 'vitest';
import { judgeTried } from '../../src/kitchen/study/judge-tried';
import { judgeInput } from '../../src/kitchen/study/readings';
import { studyRoomNow } from '../../src/kitchen/study/room-study';
import { layScheme } from '../../src/kitchen/study/scheme';
import { settingLight } from '../../src/kitchen/study/setting-light';
import { beginScheme, solveSchemeGroup } from '../../src/kitchen/study/solved-scheme';
import { withFinishOn } from '../../src/model/lay-alike';
import { GROUPS, type Setting } from '../../src/model/project';
import { smallProject } from '../workers/small-project';

// A trial solves lights of one spectrum together and dark ones not at all. What it reads must be what a change once made reads,
// which is solved group by group: within the solver's tolerance of 1e-5 of what is usual in a band.

const [overcast, , evening] = smallProject.settings as [Setting, Setting, Setting];
const lamp = (level: number, light: string) => ({ level, light });
/** Two lamps of one spectrum at unlike levels and one of another beside daylight: everything the shortcut touches. */
const mixed: Setting = {
  ...evening,
  id: 'mixed',
  daylight: overcast.daylight,
  lamps: {
    ceiling: lamp(0.6, 'LED-B2'),
    'under-cabinet': lamp(1, 'LED-B2'),
    pendant: lamp(0.7, 'led:2700,90'),
    hood: lamp(0, 'LED-B2'),
  },
};

describe('a changed scheme in a room studied already', () => {
  it('reads what the change reads once it is made and solved light by light', () => {
    const project = withFinishOn(smallProject, smallProject.options[1]!, ['floor'], 'TL-07');
    if (!project.ok) throw new Error(project.problem.text);
    const setting = settingLight(smallProject, mixed);
    if (!setting.ok) throw new Error(setting.problem.text);
    const study = studyRoomNow(smallProject, setting.value.daylight);
    const tried = judgeTried(project.value, 'our-floor', study, setting.value);
    if (!tried.ok) throw new Error(tried.problem.text);
    const scheme = layScheme(project.value, 'our-floor', study.room.surfaces);
    if (!scheme.ok) throw new Error(scheme.problem.text);
    const solved = beginScheme(scheme.value, GROUPS.length);
    for (const group of GROUPS.keys()) solveSchemeGroup(study, solved, group);
    const made = judgeInput(project.value, study, solved, setting.value);
    expect(tried.value.surfaces.map(({ finish }) => finish.id)).toContain('TL-07');
    expect(tried.value).toEqual(nearly(made));
  }, 60_000);
});

/** Numbers to three parts in ten thousand of themselves, or that much of one unit. */
function nearly(value: unknown): unknown {
  if (typeof value === 'number') return expect.closeTo(value, Math.abs(value) > 100 ? 0 : 3);
  if (Array.isArray(value)) return value.map(nearly);
  if (ArrayBuffer.isView(value) || value === null || typeof value !== 'object') return value;
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, nearly(one)]));
}
