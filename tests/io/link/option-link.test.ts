import { deflateRawSync, inflateRawSync, crc32 as zlibCrc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mulberry32 } from '../../../src/engine/random';
import { fromBase64Url, toBase64Url } from '../../../src/io/link/base64url';
import { DICTIONARY_1 } from '../../../src/io/link/dictionary-1.data';
import { optionFragment, readFragment } from '../../../src/io/link/option-link';
import { projectText } from '../../../src/io/project-file';
import { applyCommand } from '../../../src/model/apply-command';
import type { Command } from '../../../src/model/commands';
import { usualRoom } from '../../../src/model/new-kitchen';
import { newProject } from '../../../src/model/new-project';
import { optionAlone } from '../../../src/model/option-alone';
import type { Project } from '../../../src/model/project';
import { demoProject } from '../demo';
import { COPIED_LOOK_1, OUR_FLOOR_1 } from './version-1';

// Checks: node:zlib (raw DEFLATE with a preset dictionary, CRC-32) and Buffer (base64url), both of Node.

const demo = demoProject();
const dictionary = Buffer.from(DICTIONARY_1);
const linkOf = (project: Project) => optionFragment(project, project.options.at(-1)!);
const codeOf = (fragment: string) => {
  const read = readFragment(fragment);
  if (read.ok) throw new Error('it was read');
  expect(read.problem.remedy).not.toBe('');
  return read.problem.code;
};
/** A link as a program that packs by node:zlib would make it. */
const packed = (text: string, crc = zlibCrc32(text)) => {
  const head = Buffer.alloc(4);
  head.writeUInt32BE(crc);
  return `#o1.${Buffer.concat([head, deflateRawSync(Buffer.from(text), { level: 9, dictionary })]).toString('base64url')}`;
};

const text = fc.oneof(
  fc.constantFrom('Küche am Hang', '台所', '"quoted" \\ and </script>', '𝕏'),
  fc.string({ minLength: 1 }),
);
const change: fc.Arbitrary<Command> = fc.oneof(
  text.map((name): Command => ({ kind: 'rename', what: 'project', name })),
  text.map((note): Command => ({ kind: 'set-note', what: 'project', note })),
  fc
    .record({
      surface: fc.constantFrom('floor' as const, 'backsplash' as const, 'base-fronts' as const, 'wall' as const),
      finish: fc.constantFrom(...demo.library.map(({ id }) => id), 'NONE'),
    })
    .map((one): Command => ({ kind: 'lay-finish', option: 'our-floor', ...one })),
  text.map((label): Command => ({ kind: 'edit-finish', finish: 'PT-01', changes: { label, tags: ['mine'] } })),
  fc
    .double({ min: 0, max: 1, noNaN: true })
    .map((level): Command => ({ kind: 'set-group', setting: 'day', group: 'ceiling', level })),
  fc.constant<Command>({
    kind: 'together',
    label: 'a lamp of its own',
    commands: [
      { kind: 'add-lamp', lamp: { id: 'own', label: 'Own', start_nm: 380, step_nm: 5, power: Array(81).fill(1) } },
      { kind: 'set-group', setting: 'day', group: 'hood', light: 'own' },
    ],
  }),
  text.map((name): Command => ({ kind: 'freeze-revision', id: 'R1', name, at: '2026-05-04T16:30Z', note: '' })),
);

describe('a link', () => {
  it('brings back the very option it was made of, whatever the project', () => {
    fc.assert(
      fc.property(fc.array(change, { maxLength: 8 }), (changes) => {
        const project = changes.reduce((before, one) => {
          const result = applyCommand(before, one);
          return result.ok ? result.value : before;
        }, demo);
        const read = readFragment(linkOf(project));
        if (!read.ok) throw new Error(read.problem.text);
        expect(projectText(read.value.project)).toBe(projectText(optionAlone(project, project.options.at(-1)!)));
      }),
      { numRuns: 40 },
    );
  });

  it.each(['us', 'uk', 'eu'] as const)(
    'does so for new kitchens of the region %s, in under 2000 characters',
    (region) => {
      for (const layout of ['one-wall', 'galley', 'l', 'u', 'l-island', 'peninsula'] as const) {
        const made = newProject({ room: { layout, region, ...usualRoom(layout, region) } }, demo, 'new');
        if (!made.ok) throw new Error(made.problem.text);
        const option = { ...demo.options[1]!, id: 'first' };
        const project = { ...made.value, options: [option] };
        const link = linkOf(project);
        expect(link.length).toBeLessThan(2000);
        const read = readFragment(link);
        expect(read.ok && projectText(read.value.project)).toBe(projectText(optionAlone(project, option)));
      }
    },
  );

  it('of the demo has under 2000 characters, and is one that node:zlib reads', () => {
    for (const option of demo.options) {
      const link = optionFragment(demo, option);
      expect(link.length).toBeLessThan(2000);
      expect(link).toMatch(/^#o1\.[\w-]+$/);
      const bytes = Buffer.from(link.slice(4), 'base64url');
      const inflated = inflateRawSync(bytes.subarray(4), { dictionary });
      expect(zlibCrc32(inflated)).toBe(bytes.readUInt32BE(0));
      expect(JSON.parse(inflated.toString())).toEqual(JSON.parse(projectText(optionAlone(demo, option))));
    }
  });

  it('leaves behind what is meant for oneself and what is not in use', () => {
    const read = readFragment(
      linkOf({
        ...demo,
        log: [{ at: '2026-05-04T16:30Z', kind: 'note', text: 'secret' }],
        options: demo.options.map((one) => ({ ...one, note: 'secret' })),
        library: demo.library.map((one) => ({
          ...one,
          tags: ['secret'],
          origin: { library: 'secret', name: 'secret', finish: one.id },
        })),
      }),
    );
    if (!read.ok) throw new Error(read.problem.text);
    expect(read.value.text).not.toContain('secret');
    expect(read.value.project.options).toHaveLength(1);
    expect(read.value.project.library.length).toBeLessThan(demo.library.length / 2);
    expect(read.notices?.filter(({ code }) => code !== 'nothing-chosen')).toEqual(undefined);
  });

  it('of version 1 opens for ever', () => {
    // Not one character of the dictionary may change.
    expect(zlibCrc32(DICTIONARY_1)).toBe(CRC_OF_DICTIONARY_1);
    for (const [link, id, floor, finishes] of [
      [COPIED_LOOK_1, 'copied-look', 'WD-01', 9],
      [OUR_FLOOR_1, 'our-floor', 'ST-01', 9],
    ] as const) {
      const read = readFragment(link);
      if (!read.ok) throw new Error(read.problem.text);
      const { project } = read.value;
      expect(project.id).toBe(`terrace-${id}`);
      expect(project.options.map((option) => [option.id, option.scheme.floor.finish])).toEqual([[id, floor]]);
      expect(project.library).toHaveLength(finishes);
      expect(project.kitchen.name).toBe('L kitchen with island');
    }
  });
});

describe('a link that is not as it was made', () => {
  const link = linkOf(demo);

  it('is read with what mail programs put into it and behind it', () => {
    const broken = `${link.slice(0, 300)}\r\n ${link.slice(300, 500)}%0A${link.slice(500)}`;
    for (const one of [broken, `${link}.`, `${link}>`, `${link}).`]) expect(readFragment(one).ok, one).toBe(true);
  });

  it('is refused where characters are missing, changed or of no link at all', () => {
    expect(codeOf(link.slice(0, -5))).toBe('damaged-link');
    expect(codeOf(link.slice(0, 40))).toBe('damaged-link');
    expect(codeOf('#o1.')).toBe('damaged-link');
    expect(codeOf('#o1.ä')).toBe('damaged-link');
    expect(codeOf('')).toBe('damaged-link');
    expect(codeOf('#o0.AAAA')).toBe('damaged-link');
    expect(codeOf(packed('{}', 1))).toBe('damaged-link');
  });

  it('is refused as newer, by its own number or that of what it holds', () => {
    expect(codeOf(link.replace('#o1.', '#o2.'))).toBe('newer-link');
    expect(codeOf(link.replace('#o1.', '#o10.'))).toBe('newer-link');
    const later = JSON.stringify({ ...optionAlone(demo, demo.options[0]!), version: 10 });
    expect(codeOf(packed(later))).toBe('newer-version');
  });

  it('is refused where it holds no sound project', () => {
    expect(codeOf(packed('[1, 2'))).toBe('file-cut-off');
    expect(codeOf(packed('{}'))).toBe('not-a-project');
    const { options: _, ...without } = optionAlone(demo, demo.options[0]!);
    expect(codeOf(packed(JSON.stringify(without)))).toBe('missing-field');
  });

  it('is refused before it fills the memory', () => {
    expect(codeOf(packed(' '.repeat(40_000_000)))).toBe('link-too-large');
    expect(codeOf(`#o1.${'A'.repeat(200_001)}`)).toBe('link-too-large');
    expect(
      readFragment(packed(`${JSON.stringify(optionAlone(demo, demo.options[0]!))}${' '.repeat(900_000)}`)).ok,
    ).toBe(true);
  });

  it('never throws, whatever happened to it', () => {
    const random = mulberry32(20261127);
    const pick = (most: number) => Math.floor(random() * most);
    let refused = 0;
    for (let i = 0; i < 2000; i++) {
      let one = link;
      for (let n = 1 + pick(3); n > 0; n--) {
        const at = pick(one.length);
        const what = pick(4);
        const inserted = String.fromCharCode(32 + pick(what === 0 ? 95 : 2000));
        if (what === 3) one = one.slice(0, at) + one.slice(at + 1 + pick(30));
        else if (what === 2) one = one.slice(0, at) + one.slice(pick(one.length));
        else one = one.slice(0, at) + inserted + one.slice(at + pick(2));
      }
      const read = readFragment(one);
      if (read.ok) expect(projectText(read.value.project)).toBe(projectText(optionAlone(demo, demo.options.at(-1)!)));
      else {
        refused++;
        expect(read.problem.remedy).not.toBe('');
      }
    }
    expect(refused).toBeGreaterThan(1500);
  });
});

it('base64url is that of Node, both ways', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 50 }), (bytes) => {
      const digits = toBase64Url(bytes);
      expect(digits).toBe(Buffer.from(bytes).toString('base64url'));
      expect(fromBase64Url(digits)).toEqual(bytes);
    }),
  );
  for (const wrong of ['A', 'AAAAA', 'A+/A', 'AA==', 'ÄAAA']) expect(fromBase64Url(wrong)).toBeNull();
});

const CRC_OF_DICTIONARY_1 = 0x68faa2ea;
