import type { Severity, Warning } from './assessment';
import type { Burning, JudgeInput } from './input';
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
  const { daylight, lamps, isDimmed, hasLampsOff } = input.burning;
  const isShort = found.some((f) => f.severity === 'visible');
  // By day one works by lamps where there are some: nothing has to change, so it is one line, and none where daylight nearly does.
  if (hasLampsOff) return isShort ? [byDaylightAlone(found.filter((f) => f.severity === 'visible'))] : [];
  // Who dims lamps for dinner knows that it is dim.
  const severity: Severity = !isDimmed && isShort ? 'visible' : 'note';
  const surfaces = inDecisionOrder(found.map((f) => f.surface));
  const each = surfaces.map((surface) => found.find((f) => f.surface === surface)!);
  const advice = daylight && !lamps ? ' Switch lamps on for work.' : '';
  return [
    {
      code: 'low-light',
      severity,
      surfaces,
      text: `${sentenceCase(joined(each.map(getsLittle)))} in this light${isDimmed ? ', dimmed as it is' : ''}; ${recommended(found)}.${advice}`,
      why: `Mean illuminance; ${joined(each.map(atItsDarkest))}. ${SOURCE}`,
      basis: 'installed',
      holds_in: null,
    },
  ];
}

const byDaylightAlone = (found: readonly LowLight[]): Warning => {
  const surfaces = inDecisionOrder(found.map((f) => f.surface));
  const least = found.reduce((most, one) => (one.illuminance_lx < most.illuminance_lx ? one : most));
  const who = surfacesPhrase(surfaces);
  const lux = `${surfaces.length > 1 ? 'as little as ' : ''}about ${luxBelow(least.illuminance_lx)}`;
  return {
    code: 'low-light',
    severity: 'note',
    surfaces,
    text: `By daylight alone ${who.text} ${who.plural ? 'get' : 'gets'} ${lux}: for work there lamps are on by day, too.`,
    why: `Mean illuminance, where ${WORKTOP_LX.least} lx is recommended; ${joined(found.map(atItsDarkest))}. ${SOURCE}`,
    basis: 'installed',
    holds_in: null,
  };
};

const recommended = (found: readonly LowLight[]): string =>
  found.some((f) => f.severity === 'visible')
    ? `${WORKTOP_LX.least} lx is recommended at sink and cooktop, ${WORKTOP_LX.preparing} lx where food is prepared`
    : `${WORKTOP_LX.preparing} lx is recommended where food is prepared`;

const getsLittle = ({ surface, illuminance_lx }: LowLight): string =>
  `${surfacesPhrase([surface]).text} gets about ${luxBelow(illuminance_lx)}`;

const atItsDarkest = ({ surface, lux_min }: LowLight): string =>
  `${surfacesPhrase([surface]).text} gets about ${luxBelow(lux_min)} at its darkest place`;

/** Rounded down, so that what falls short of a limit does not read as the limit. */
const luxBelow = (lux: number): string => `${lux < 20 ? Math.floor(lux) : Math.floor(lux / 10) * 10} lx`;

function causeOf({ daylight, noDaylightFor, hasNoLamp }: Burning): string {
  const noDaylight = noDaylightFor === 'night' ? 'the sun is down' : 'there is no window';
  if (hasNoLamp) {
    return daylight && noDaylightFor
      ? `No lamp of this setting is in the room and ${noDaylight}`
      : 'No lamp of this setting is in the room';
  }
  return noDaylightFor ? sentenceCase(noDaylight) : 'Next to no light reaches the room in this setting';
}

/** One sentence for the whole room, not one per surface. */
const darkWarning = ({ surfaces, burning }: JudgeInput): Warning => ({
  code: 'low-light',
  severity: 'grave',
  surfaces: inDecisionOrder(surfaces.map((s) => s.surface)),
  text:
    burning.daylight || burning.lamps
      ? `${causeOf(burning)}, so nothing can be said of colors in place.${burning.hasNoLamp ? ' Add lamps to the room.' : burning.lamps ? '' : ' Switch lamps on.'}`
      : 'No light is on in this setting, so nothing can be said of colors in place. Switch lamps on, or let daylight in.',
  why: 'No surface gets as much as a hundredth of a lux. The findings rest on the samples alone.',
  basis: 'installed',
  holds_in: null,
});
