import type { Repair } from '../engine/judge/assessment';
import { laidAlike } from '../model/lay-alike';
import { layOnSurfaces } from '../model/lay-on-surfaces';
import { layingFor } from '../model/laying';
import type { Option } from '../model/project';
import type { HelpSource } from '../ui/findings/WhatHelps';
import { settingShortName } from '../ui/words/picture';
import { useApp, useAppState } from './context';
import { projectOf } from './state';
import { usePaints } from './use-option-paints';
import { APP_WORDS } from './words';

/** What the findings of an option need to show and try what would help. */
export function useHelp(option: Option): HelpSource {
  const { actions } = useApp();
  const project = useAppState(projectOf);
  const isTrying = useAppState((state) => state.tryOut !== null);
  const paintOf = usePaints();
  return {
    paintOf: ({ finish: id, surfaces }) => {
      const finish = project.library.find((one) => one.id === id);
      const surface = surfaces[0]!;
      return finish
        ? paintOf(finish, layingFor(finish, surface, project.library, option.scheme[surface].laying), true)
        : null;
    },
    settingName: (id) => settingShortName(project.settings.find((one) => one.id === id)?.name ?? id),
    onTry: isTrying ? null : (repair) => actions.tryChange(...tried(option, repair), { option: option.id }),
  };
}

/** The commands of a repair, as it was run, and what to call them. */
function tried(option: Option, { changes }: Repair) {
  const commands = changes.flatMap(({ surfaces, finish }) =>
    layOnSurfaces(option, laidAlike(option, surfaces[0]!), finish),
  );
  const labels = changes.map(({ surfaces, label }) => APP_WORDS.layLabel(surfaces, label));
  return [commands, labels.join('; ')] as const;
}
