import { lengthWords } from '../model/length-text';
import { CAPTION } from '../ui/words/caption';
import { lightCaption } from '../ui/words/daylight';
import { settingWithLamps } from '../ui/words/lamps';
import { SEEN_BY_WORDS } from '../ui/words/seen-by';
import { localeNow, retold } from '../ui/words/spoken';
import { TRY } from '../ui/words/try-out';
import { VIEW } from '../ui/words/view';
import { eyeHeight_mm } from './eye-height';
import { drawnScene } from './scene';
import { type AppState, halvesOf, isSplitWanted, lengthUnitOf, projectOf, shownOption, shownSetting } from './state';

const MM_PER_M = 1000;

/** What the picture on screen is of, line by line: project and options, light, viewpoint, sight, date, cautions. */
export function captionLines(state: AppState, date: Date): readonly [title: string, ...rest: string[]] {
  const project = projectOf(state);
  const setting = shownSetting(state);
  const { shownAs, seenBy, marksClipped, eyes, movedEye } = state;
  const lengthUnit = lengthUnitOf(state);
  const options = isSplitWanted(state) ? halvesOf(state) : [shownOption(state)];
  const scene = drawnScene(state);
  const viewpoint = scene.room?.viewpoints.find(({ id }) => id === scene.viewpoint);
  const sight = [VIEW.told[shownAs], SEEN_BY_WORDS.told[seenBy], marksClipped ? VIEW.clippedTold : null];
  const told = sight.filter((one) => one !== null);
  const height = viewpoint && (movedEye ? Math.round(movedEye[2] * MM_PER_M) : eyeHeight_mm(eyes, viewpoint));
  return [
    CAPTION.title(
      project.name,
      options.map(({ name }) => name),
    ),
    CAPTION.light(settingWithLamps(setting, project.lamps), lightCaption(setting.daylight).join(' ')),
    ...(scene.id === 'stand'
      ? [CAPTION.stand]
      : viewpoint && height !== undefined
        ? [CAPTION.view(retold(viewpoint.name), lengthWords(height, lengthUnit), movedEye !== null)]
        : []),
    ...(state.tryOut ? [TRY.caption(retold(state.tryOut.label))] : []),
    told.length > 0 ? told.join(' ') : CAPTION.usual,
    CAPTION.kept(date.toLocaleDateString(localeNow(), { dateStyle: 'long' })),
    CAPTION.cautions,
  ];
}

/** A name for the file that every system takes: small letters, digits and hyphens. */
export function pictureFileName(state: AppState): string {
  const options = isSplitWanted(state) ? halvesOf(state) : [shownOption(state)];
  const words = [projectOf(state).name, ...options.map(({ name }) => name), shownSetting(state).name].join(' ');
  const plain = words
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, MOST_LETTERS);
  return `${plain === '' ? 'kitchen' : `kitchen-${plain}`}.png`;
}

const MOST_LETTERS = 80;
