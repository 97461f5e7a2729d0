import { lazy, Suspense, useState } from 'react';
import type { Result } from '../../engine/result';
import { lookOfOption } from '../../kitchen/carry/look-of-option';
import type { CopiedLook } from '../../model/look';
import { type LookChoice, LookPanel } from '../../ui/look/LookPanel';
import type { PicturePixels } from '../../ui/look/picture-points';
import { refusalTold } from '../../ui/parts/told';
import { useSpoken } from '../../ui/parts/use-spoken';
import { LOOK } from '../../ui/words/look';
import { useApp, useAppState } from '../context';
import { layCarried, MOST_OPTIONS, showBeside, tryCarried } from '../lay-look';
import { decodePicture, freeLookId, readLookFile, saveLookFile } from '../look-files';
import { projectOf, shownOption } from '../state';
import { useCarried } from '../use-carried';

const PictureLook = lazy(() => import('../../ui/look/PictureLook').then((ui) => ({ default: ui.PictureLook })));

const NO_LOOKS: readonly CopiedLook[] = [];

/** The panel of a copied look: from an option, a picture or a file, carried to the option on screen. */
export function LookPane() {
  const { store, actions, relateLook } = useApp();
  const project = useAppState(projectOf);
  const option = useAppState(shownOption);
  const looks = project.looks ?? NO_LOOKS;
  const [wanted, setWanted] = useState<string | null>(null);
  const [asIs, setAsIs] = useState(false);
  const [picture, setPicture] = useState<PicturePixels | null>(null);
  const choices = useSpoken((): readonly LookChoice[] => {
    const others = project.options.filter(({ id }) => id !== option.id);
    return [
      ...others.map(({ id, name }) => ({ key: `option:${id}`, name: LOOK.fromOption(name), isKept: false })),
      ...looks.map(({ id, name, source }) => ({
        key: `look:${id}`,
        name: source === 'picture' ? LOOK.fromPicture(name) : LOOK.fromScheme(name),
        isKept: true,
      })),
    ];
  }, [project.options, option.id, looks]);
  const chosen = choices.find(({ key }) => key === wanted)?.key ?? choices[0]?.key ?? null;
  const id = chosen?.replace(/^\w+:/, '') ?? null;
  const isOption = chosen?.startsWith('option:') ?? false;
  const look = id === null ? null : isOption ? id : (looks.find((one) => one.id === id) ?? null);
  const carried = useCarried(look, asIs);

  const told = (result: Result<unknown>) => {
    if (!result.ok) store.setState({ told: refusalTold(result.problem, result.more ?? []) });
  };
  const add = (made: CopiedLook) => {
    const added = { ...made, id: freeLookId(looks) };
    const problems = actions.attempt({ kind: 'add-look', look: added });
    if (problems.length === 0) setWanted(`look:${added.id}`);
    return problems;
  };
  const openPicture = async (file: File) => {
    const decoded = await decodePicture(file);
    if (decoded.ok) setPicture(decoded.value);
    told(decoded);
  };
  const openFile = async (file: File) => {
    const read = await readLookFile(file);
    told(read);
    const [problem, ...more] = read.ok ? add(read.value) : [];
    if (problem) store.setState({ told: refusalTold(problem, more) });
  };
  const keepFile = () => {
    const kept = typeof look === 'string' ? lookOfOption(project, look) : null;
    if (kept) told(kept);
    const saved = kept?.ok ? kept.value : typeof look === 'string' ? null : look;
    if (saved) saveLookFile(saved);
  };
  return (
    <LookPanel
      choices={choices}
      chosen={chosen}
      onChoose={setWanted}
      optionName={option.name}
      asIs={asIs}
      onAsIs={setAsIs}
      carried={carried}
      hasRoom={project.options.length < MOST_OPTIONS}
      onLay={(what, changes) => {
        const laidOn = layCarried(store, actions, what, changes);
        if (laidOn !== null) setAsIs(true);
      }}
      onTry={(what, changes) => {
        if (tryCarried(store, actions, what, changes)) setAsIs(true);
      }}
      onSideBySide={
        isOption && id !== null
          ? (what) => {
              // The look itself beside what it becomes here; laid first where that is not there yet.
              const laidOn = what.commands.length > 0 ? layCarried(store, actions, what, []) : option.id;
              if (laidOn === null) return;
              setAsIs(true);
              showBeside(store, id, laidOn);
            }
          : null
      }
      onPicture={(file) => void openPicture(file)}
      onFile={(file) => void openFile(file)}
      onKeepFile={keepFile}
      onRemove={() => id !== null && actions.run({ kind: 'remove-look', look: id })}
      onPoint={(surfaces) => store.setState({ pointed: surfaces })}
      onClose={() => store.setState({ panel: null })}
    >
      {picture && (
        <Suspense fallback={null}>
          <PictureLook picture={picture} onRelate={relateLook} onKeep={add} onClose={() => setPicture(null)} />
        </Suspense>
      )}
    </LookPanel>
  );
}
