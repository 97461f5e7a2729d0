import fc from 'fast-check';
import { SURFACES } from '../../src/engine/surface';
import type { Command } from '../../src/model/commands';
import { LAMP_GROUPS } from '../../src/model/project';
import { demoProject } from '../io/demo';
import { orderCommand } from './random-order-commands';

const demo = demoProject();

// Ids that exist most of the time, and some that do not.
const option = fc.constantFrom('copied-look', 'our-floor', 'second', 'nowhere', '');
const setting = fc.constantFrom('day', 'evening', 'noon');
const surface = fc.constantFrom(...SURFACES);
const finishId = fc.constantFrom(...demo.library.map((finish) => finish.id), 'NEW-1', 'NEW-2', 'XX-99');
const level = fc.oneof(fc.double({ min: 0, max: 1, noNaN: true }), fc.constantFrom(-0.1, 1.1, Number.NaN));
const name = fc.constantFrom('A name', '', '  ', 'Another');
const laying = fc.record(
  {
    layout: fc.constantFrom('plain' as const, 'planks' as const, 'stack' as const, 'running-bond' as const),
    joint_mm: fc.constantFrom(0, 2, 3, -1, 500),
    grout: fc.constantFrom('GR-01', 'GR-02', 'TL-01', 'XX-99'),
    direction_deg: fc.constantFrom(0 as const, 90 as const),
  },
  { requiredKeys: ['layout'] },
);
const newFinish = fc
  .record({ id: fc.constantFrom('NEW-1', 'NEW-2', 'PT-01', ''), l: fc.integer({ min: -20, max: 120 }) })
  .map(({ id, l }) => {
    const paint = demo.library.find((finish) => finish.id === 'PT-02')!;
    const color = { kind: 'lab', lab: [l, 0, 2], illuminant: 'D65', observer_deg: 2 } as const;
    return { ...paint, id, components: [{ role: 'base' as const, share: 1, color }] };
  });

const simple: fc.Arbitrary<Command> = fc.oneof(
  orderCommand,
  fc.record({ kind: fc.constant('lay-finish' as const), option, surface, finish: finishId }),
  fc.record({ kind: fc.constant('lay-finish' as const), option, surface, finish: finishId, laying }),
  fc.record({ kind: fc.constant('set-laying' as const), option, surface, laying }),
  fc.record({
    kind: fc.constant('set-state' as const),
    option,
    surface,
    state: fc.constantFrom('fixed' as const, 'open' as const, 'decided' as const, 'ordered' as const),
  }),
  fc.record({ kind: fc.constant('add-finish' as const), finish: newFinish }),
  fc.record({
    kind: fc.constant('edit-finish' as const),
    finish: finishId,
    changes: fc.record(
      {
        label: name,
        gloss_gu: fc.constantFrom(0, 40, 101, Number.NaN),
        class: fc.constantFrom('paint' as const, 'grout' as const, 'glazed' as const),
      },
      { requiredKeys: [] },
    ),
  }),
  fc.record({ kind: fc.constant('remove-finish' as const), finish: finishId }),
  fc.record(
    {
      kind: fc.constant('set-group' as const),
      setting,
      group: fc.constantFrom(...LAMP_GROUPS),
      level,
      light: fc.constantFrom('D65', 'LED-B1', 'FL11', 'LED-Z9'),
      dims: fc.constantFrom('same' as const, 'warm' as const),
    },
    { requiredKeys: ['kind', 'setting', 'group'] },
  ),
  fc.record({
    kind: fc.constant('copy-option' as const),
    option,
    id: fc.constantFrom('second', 'our-floor', ''),
    name,
  }),
  fc.record({ kind: fc.constant('remove-option' as const), option }),
  fc.record({
    kind: fc.constant('rename' as const),
    what: fc.constantFrom('project' as const, 'option' as const, 'setting' as const),
    id: fc.constantFrom('day', 'our-floor', 'nowhere'),
    name,
  }),
);
/** A command about finishes, options and lamps, right or wrong. */
export const randomCommand: fc.Arbitrary<Command> = fc.oneof(
  { weight: 8, arbitrary: simple },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: fc.constant('together' as const),
      label: fc.constant('several'),
      commands: fc.array(simple, { maxLength: 4 }),
    }),
  },
);
