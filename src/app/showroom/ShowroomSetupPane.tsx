import { useEffect, useState } from 'react';
import type { Library } from '../../model/library';
import { type ShowroomChoices, ShowroomSetup } from '../../ui/showroom/ShowroomSetup';
import { useApp, useAppState } from '../context';
import { chosenOption, documentOf } from '../state';
import { canFillScreen } from './full-screen';
import { keptShowroom, turnShowroomOn } from './kept-showroom';
import type { Showroom } from './showroom-state';
import { canKeepAwake } from './wake-lock';

const USUAL: Omit<ShowroomChoices, 'option'> = {
  name: '',
  range: { project: true, libraries: [] },
  minutes: 3,
  fillsScreen: true,
  typesIn: false,
};

/** The form that sets the showroom mode up. The mode begins with the page opened anew, so that nothing of before is at hand in it. */
export function ShowroomSetupPane() {
  const { store, libraries, openStore } = useApp();
  const project = useAppState(documentOf);
  const option = useAppState((state) => chosenOption(state).id);
  const [known, setKnown] = useState<readonly [before: Showroom | null, kept: readonly Library[]] | null>(null);
  useEffect(() => {
    void Promise.all([keptShowroom(openStore), libraries.list()]).then(setKnown);
  }, [openStore, libraries]);
  if (!known) return null;
  const [before, kept] = known;
  return (
    <ShowroomSetup
      before={{ ...(before ?? USUAL), option }}
      options={project.options.map(({ id, name }) => ({ id, name }))}
      project={project.name}
      libraries={kept.map(({ id, name, finishes }) => ({ id, name, count: finishes.length }))}
      canKeepAwake={canKeepAwake()}
      canFillScreen={canFillScreen()}
      onBegin={async (choices) => {
        try {
          await turnShowroomOn(openStore, { ...choices, start: project });
        } catch {
          return false;
        }
        location.reload();
        return true;
      }}
      onClose={() => store.setState({ settingUpShowroom: false })}
    />
  );
}
