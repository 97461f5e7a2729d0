import { type Result, success } from '../../engine/result';
import { exportedRoom } from '../../kitchen/study/exported-room';
import { lightReport } from '../../kitchen/study/light-report';
import { standReport } from '../../kitchen/study/stand-report';
import { readArguments } from '../arguments';
import { COMMON_OPTIONS, type Command, type Report } from '../command';
import { inFile, namesIn, type Opened, openProject } from '../open-project';
import { lightText } from '../text/light-text';
import { standText } from '../text/stand-text';
import { checkWritable, writeText } from '../write-text';

const OPTIONS = {
  ...COMMON_OPTIONS,
  option: { type: 'string' },
  setting: { type: 'string' },
  stand: { type: 'string' },
  'export-room': { type: 'string' },
} as const;

/** `light PROJECT`: how much light falls on every surface, what color it has there and where that comes from. */
export const light: Command = {
  name: 'light',
  usage: 'light PROJECT [--option ID] [--setting ID] [--stand FINISH] [--export-room FILE] [--json]',
  summary:
    'Illuminance on every surface, where the light comes from and what it does to colors; with --stand a sample flat against ' +
    'upright on the counter; with --export-room the room as quads for other renderers, with the irradiance to expect.',
  run(args): Result<Report> {
    const given = readArguments(args, OPTIONS, 'The project file', this.usage);
    if (!given.ok) return given;
    const { subject: file, values } = given.value;
    const opened = openProject(file, values.option, values.setting);
    if (!opened.ok) return opened;
    const target = values['export-room'];
    const writable = target === undefined ? success(null) : checkWritable(target, file);
    if (!writable.ok) return writable;
    const report =
      values.stand === undefined ? onSurfaces(opened.value) : ofSample(opened.value, values.stand, values.json);
    if (!report.ok) return { ...report, problem: inFile(file, report.problem) };
    const { json, text } = report.value;
    const { notices } = opened.value;
    const names = namesIn(opened.value.project);
    if (target === undefined) return success({ json, text, notices, names });
    const written = writeRoom(opened.value, target);
    if (!written.ok) return written;
    const { quads, zones } = written.value;
    return success({
      json: { ...json, exported_room: { file: target, quads, zones } },
      text: `${text}\n\nWrote the room to ${target}: ${quads} quads, ${zones} zones.`,
      notices,
      names,
    });
  },
};

interface Words {
  readonly json: object;
  readonly text: string;
}

function onSurfaces({ project, option, setting }: Opened): Result<Words> {
  const found = lightReport(project, option, setting);
  return found.ok ? success({ json: found.value, text: lightText(found.value) }) : found;
}

/** What every surface has is in the data only: it takes longer than the sample. */
function ofSample({ project, option, setting }: Opened, finish: string, withSurfaces: boolean): Result<Words> {
  const found = standReport(project, option, setting, finish, withSurfaces);
  return found.ok ? success({ json: found.value, text: standText(found.value) }) : found;
}

function writeRoom({ project, option, setting }: Opened, file: string): Result<{ quads: number; zones: number }> {
  const room = exportedRoom(project, option, setting);
  if (!room.ok) return room;
  const { note, quads, zones } = room.value;
  const lines = (records: readonly object[]) => records.map((one) => JSON.stringify(one, shortened)).join(',\n');
  const text = `{"note":${JSON.stringify(note)},\n"quads":[${lines(quads)}],\n"zones":[${lines(zones)}]}\n`;
  const written = writeText(file, text);
  return written.ok ? success({ quads: quads.length, zones: zones.length }) : written;
}

/** Micrometres and millionths are enough. */
const shortened = (_: string, value: unknown): unknown =>
  typeof value === 'number' ? Number(value.toFixed(6)) : value;
