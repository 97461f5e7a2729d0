import { useEffect, useMemo, useState } from 'react';
import { SURFACES } from '../../engine/surface';
import { cautionsOf } from '../../kitchen/cautions-of';
import { presentSurfaces } from '../../kitchen/present-surfaces';
import { cautionText } from '../../model/caution-words';
import { ledgeSamples } from '../../ui/ledge/ledge-samples';
import { ShowroomList } from '../../ui/showroom/ShowroomList';
import { TakeHome } from '../../ui/showroom/TakeHome';
import { readPixels } from '../../view/read-pixels';
import { useApp, useAppState } from '../context';
import { pictureCanvas } from '../export-picture';
import { makeLink } from '../make-link';
import { projectOf, shownOption } from '../state';
import { usePaints } from '../use-option-paints';

/** The list a customer takes home, of the option on screen. */
export function ShowroomListPane() {
  const { store } = useApp();
  const option = useAppState(shownOption);
  const project = useAppState(projectOf);
  const showroom = useAppState((state) => state.showroom?.name ?? '');
  const assessment = useAppState((state) => state.assessments[shownOption(state).id] ?? null);
  const { library } = project;
  const present = useAppState((state) => (state.room ? presentSurfaces(state.room) : SURFACES));
  const paintOf = usePaints();
  const picture = usePicture();
  const samples = useMemo(() => {
    const { upright, flat } = ledgeSamples(option, library, present);
    return [...flat, ...upright];
  }, [option, library, present]);
  const cautions = useMemo(
    () => cautionsOf(project, option, assessment).map(cautionText),
    [project, option, assessment],
  );
  const link = useMemo(() => makeLink(project, option), [project, option]);
  return (
    <ShowroomList
      showroom={showroom}
      option={option.name}
      today={new Date()}
      picture={picture}
      samples={samples}
      paintOf={({ finish, laying }) => paintOf(finish, laying)}
      warnings={assessment?.warnings.map(({ text }) => text) ?? []}
      cautions={cautions}
      link={<TakeHome made={link} />}
      onPrint={() => window.print()}
      onClose={() => store.setState({ listing: false })}
    />
  );
}

const QUALITY = 0.9;

/** What the picture shows when the list is opened; null until it is read, and where nothing is drawn. */
function usePicture(): string | null {
  const [picture, setPicture] = useState<string | null>(null);
  useEffect(() => {
    const drawn = pictureCanvas();
    if (!drawn) return;
    let isWanted = true;
    readPixels(drawn).then(
      ({ width, height, data }) => {
        const canvas = Object.assign(document.createElement('canvas'), { width, height });
        canvas.getContext('2d')?.putImageData(new ImageData(new Uint8ClampedArray(data), width, height), 0, 0);
        if (isWanted) setPicture(canvas.toDataURL('image/jpeg', QUALITY));
      },
      // A list without a picture is a list all the same.
      () => undefined,
    );
    return () => {
      isWanted = false;
    };
  }, []);
  return picture;
}
