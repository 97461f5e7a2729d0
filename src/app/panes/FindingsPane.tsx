import { lazy, Suspense, useMemo, useState } from 'react';
import type { Assessment } from '../../engine/judge/assessment';
import type { SurfaceId } from '../../engine/surface';
import { cautionsOf } from '../../kitchen/cautions-of';
import { isEmpty } from '../../model/empty-surface';
import { Findings } from '../../ui/findings/Findings';
import { readingText } from '../../ui/reading/copy-text';
import { ReadingCard } from '../../ui/reading/ReadingCard';
import { seenPlaces } from '../../ui/reading/seen-places';
import { SampleOnStand } from '../../ui/stand/SampleOnStand';
import { flatPaint } from '../../ui/swatch/swatch-color';
import { settingWithLamps } from '../../ui/words/lamps';
import { settingShortName } from '../../ui/words/picture';
import { useApp, useAppState } from '../context';
import { darknessOf } from '../dark-room';
import { drawnScene } from '../scene';
import { withinRange } from '../showroom/in-range';
import { projectOf, shownOption, shownSetting } from '../state';
import { useHelp } from '../use-help';
import { useInLights } from '../use-in-lights';
import { useOptionPaints } from '../use-option-paints';
import { useStand } from '../use-stand';
import { BalancePane } from './BalancePane';
import { UnsettledPane } from './UnsettledPane';

const RoomPane = lazy(() => import('./RoomPane').then((pane) => ({ default: pane.RoomPane })));

export function FindingsPane() {
  const { store } = useApp();
  const option = useAppState(shownOption);
  const project = useAppState(projectOf);
  const setting = useAppState(shownSetting);
  const assessed = useAppState((state) => state.assessments[shownOption(state).id] ?? null);
  const showroom = useAppState((state) => state.showroom);
  const assessment = useMemo(
    () => (assessed && showroom ? withinRange(assessed, project, showroom) : assessed),
    [assessed, project, showroom],
  );
  const isStale = useAppState((state) => state.stale.includes(shownOption(state).id));
  const reading = useAppState((state) => state.reading);
  const panel = useAppState((state) => state.panel);
  const unsettled = useAppState(({ unsettling, tryOut }) =>
    unsettling?.option === option.id && !tryOut ? unsettling.found.length : 0,
  );
  const trial = useAppState(({ tryOut }) => (tryOut && !tryOut.keepsFocus ? tryOut.label : null));
  const isDark = useAppState((state) => darknessOf(projectOf(state).kitchen, shownSetting(state)) !== null);
  const help = useHelp(option);
  const cautions = useMemo(() => cautionsOf(project, option, assessment), [project, option, assessment]);
  return (
    <Findings
      assessment={assessment}
      optionName={option.name}
      settingName={settingShortName(setting.name)}
      isDark={isDark}
      cautions={cautions}
      stale={isStale}
      help={help}
      inPlace={
        panel ? (
          <Suspense fallback={null}>
            <RoomPane key={panel} panel={panel} />
          </Suspense>
        ) : reading && assessment && !isEmpty(option.scheme[reading]) ? (
          <ReadingPane assessment={assessment} surface={reading} />
        ) : null
      }
      notice={<UnsettledPane />}
      unsettled={unsettled}
      trial={trial}
      inSettings={<BalancePane />}
      onPairs={() => store.setState({ panel: 'pairs', reading: null })}
      onReadings={() =>
        store.setState({ reading: assessment?.surfaces[0]?.surface ?? null, picked: null, panel: null })
      }
      onPoint={(surfaces) => store.setState({ pointed: surfaces })}
    />
  );
}

interface ReadingPaneProps {
  readonly assessment: Assessment;
  readonly surface: SurfaceId;
}

function ReadingPane({ assessment, surface }: ReadingPaneProps) {
  const { store } = useApp();
  const option = useAppState(shownOption);
  const project = useAppState(projectOf);
  const setting = useAppState(shownSetting);
  const point = useAppState((state) => state.point);
  const picked = useAppState((state) => state.picked);
  const isDark = useAppState((state) => darknessOf(projectOf(state).kitchen, shownSetting(state)) !== null);
  const takesFocus = useAppState((state) => state.aim === null);
  const held = useAppState((state) => state.held);
  const heldCard = useAppState((state) => state.heldCard);
  const onStand = useAppState((state) =>
    drawnScene(state).id === 'stand' ? (state.stand?.readings[option.id] ?? null) : null,
  );
  const paintOf = useOptionPaints(option);
  const [beside, setBeside] = useState<SurfaceId | null>(null);
  const [besideOf, setBesideOf] = useState(surface);
  // What was held beside one surface is no answer for the next.
  if (besideOf !== surface) {
    setBesideOf(surface);
    setBeside(null);
  }
  const inLights = useInLights(assessment, surface, beside);
  const assessed = assessment.surfaces.find((one) => one.surface === surface) ?? assessment.surfaces[0];
  const stand = useStand(assessment, option.scheme[assessed?.surface ?? surface].finish);
  const place = (assessed && seenPlaces(assessed)[0]) ?? null;
  const here = useMemo(() => place && { paint: flatPaint(place.lab_d65), facing: place.facing }, [place]);
  if (!assessed) return null;
  const context = {
    project: project.name,
    option: option.name,
    setting: settingWithLamps(setting, project.lamps),
    cct_k: isDark ? null : assessment.setting.cct_k,
  };
  return (
    <ReadingCard
      surfaces={assessment.surfaces.map((one) => one.surface)}
      surface={assessed}
      assessed={assessment.surfaces}
      classOf={(id) => project.library.find((finish) => finish.id === id)?.class ?? 'paint'}
      samplePaint={paintOf(assessed.surface)}
      here={here}
      point={point}
      picked={picked}
      stand={stand}
      hold={{
        finishes: project.library,
        held,
        reading: heldCard?.reading ?? null,
        onHold: (next) => store.setState({ held: next }),
      }}
      onStand={onStand && <SampleOnStand readings={onStand} surface={assessed.surface} />}
      takesFocus={takesFocus}
      inLights={inLights}
      setting={setting.id}
      isDark={isDark}
      beside={beside}
      onBeside={setBeside}
      settingName={settingShortName(setting.name)}
      copyText={() => readingText(assessed, context, point, inLights)}
      onSurface={(next) => store.setState({ reading: next, picked: null })}
      onClose={() => store.setState({ reading: null, picked: null, aim: null, held: null })}
    />
  );
}
