import type { Severity, Warning } from './assessment';
import type { JudgeInput } from './input';
import { isDark, type LowLight, lowLights, WORKTOP_LX } from './low-light';
import { inDecisionOrder, joined, sentenceCase, surfacesPhrase } from './surface-words';

/** Where the limits come from, and what the figures rest on. */
const SOURCE =
  `${WORKTOP_LX.preparing} lx where food is prepared and ${WORKTOP_LX.least} lx at sink and cooktop are what IES RP-11, as commonly ` +
  'quoted, recommends for homes; it is no rule. Lamps are taken to give the lumens they are said to, new and clean.';

/**
 * Worktops with less light than is recommended for work. `holds_in` is null: errors of sample colors move illuminance by a few per
 * cent at most, and how far lamps are off their lumens nobody has said.
 */
export function lowLightWarnings(input: JudgeInput): Warning[] {
  if (isDark(input)) return input.surfaces.length === 0 ? [] : [darkWarning(input)];
  const found = lowLights(input);
  if (found.length === 0) return [];
  const severity: Severity = found.some((f) => f.severity === 'visible') ? 'visible' : 'note';
  const surfaces = inDecisionOrder(found.map((f) => f.surface));
  const each = surfaces.map((surface) => found.find((f) => f.surface === surface)!);
  const { daylight, lamps } = input.burning;
  const advice = daylight && !lamps ? ' Switch lamps on for work.' : '';
  return [
    {
      code: 'low-light',
      severity,
      surfaces,
      text: `${sentenceCase(joined(each.map(getsLittle)))} in this light; ${recommended(severity)}.${advice}`,
      why: `Mean illuminance; ${joined(each.map(atItsDarkest))}. ${SOURCE}`,
      basis: 'installed',
      holds_in: null,
    },
  ];
}

const recommended = (severity: Severity): string =>
  severity === 'visible'
    ? `${WORKTOP_LX.least} lx is recommended at sink and cooktop, ${WORKTOP_LX.preparing} lx where food is prepared`
    : `${WORKTOP_LX.preparing} lx is recommended where food is prepared`;

const getsLittle = ({ surface, illuminance_lx }: LowLight): string =>
  `${surfacesPhrase([surface]).text} gets about ${luxBelow(illuminance_lx)}`;

const atItsDarkest = ({ surface, lux_min }: LowLight): string =>
  `${surfacesPhrase([surface]).text} gets about ${luxBelow(lux_min)} at its darkest place`;

/** Rounded down, so that what falls short of a limit does not read as the limit. */
const luxBelow = (lux: number): string => `${lux < 20 ? Math.floor(lux) : Math.floor(lux / 10) * 10} lx`;

/** One sentence for the whole room, not one per surface. */
const darkWarning = ({ surfaces, burning }: JudgeInput): Warning => ({
  code: 'low-light',
  severity: 'visible',
  surfaces: inDecisionOrder(surfaces.map((s) => s.surface)),
  text:
    burning.daylight || burning.lamps
      ? 'Next to no light reaches the room in this setting, so nothing can be said of colors in place.'
      : 'No light is on in this setting, so nothing can be said of colors in place. Switch lamps on, or let daylight in.',
  why: 'No surface gets as much as a hundredth of a lux. The findings rest on the samples alone.',
  basis: 'installed',
  holds_in: null,
});
