import { useEffect, useId, useMemo, useRef, useState } from 'react';
import type { LookRelations } from '../../engine/judge/relations/types';
import type { Problem } from '../../engine/result';
import type { CopiedLook } from '../../model/look';
import { POINTS } from '../words/look';
import { problemWords } from '../words/problems';
import { Loupe } from './Loupe';
import { PicturePlaces } from './PicturePlaces';
import { PointList } from './PointList';
import {
  colorAt,
  lookOfPoints,
  type PicturePixels,
  type PicturePoint,
  type PointColor,
  type PointSurface,
} from './picture-points';
import { YieldedRelations } from './YieldedRelations';
import './picture-look.css';

interface PictureLookProps {
  readonly picture: PicturePixels;
  readonly onRelate: (look: CopiedLook) => Promise<LookRelations | null>;
  /** Takes the look into the project; what is wrong with it, and nothing was taken then. */
  readonly onKeep: (look: CopiedLook) => readonly Problem[];
  readonly onClose: () => void;
}

/** Points are moved in a row of small steps: the relations follow when the hand rests, ms. */
const REST_MS = 250;
const SURFACES = Object.keys(POINTS.surfaces) as PointSurface[];

/** Points on a picture, what each stands on, and the relations that they yield. The picture goes with the dialog. */
export function PictureLook({ picture, onRelate, onKeep, onClose }: PictureLookProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const [points, setPoints] = useState<readonly PicturePoint[]>([]);
  const [active, setActive] = useState<number | null>(null);
  const [name, setName] = useState<string>(POINTS.usualName);
  const [refused, setRefused] = useState<readonly Problem[]>([]);
  useEffect(() => dialog.current?.showModal(), []);

  const colors = useMemo(
    () => new Map<number, PointColor>(points.map((point) => [point.id, colorAt(picture, point.x, point.y)])),
    [picture, points],
  );
  const look = useMemo(
    () => lookOfPoints(points, (point) => colors.get(point.id)!, { id: 'picture', name: name.trim() }),
    [points, colors, name],
  );
  const relations = useYield(look, onRelate);

  const add = (x: number, y: number) => {
    const id = Math.max(0, ...points.map((point) => point.id)) + 1;
    const free = SURFACES.find((surface) => points.every((point) => point.surface !== surface));
    setPoints([...points, { id, x, y, surface: free ?? 'counter', part: 'flat' }]);
    setActive(id);
  };
  const change = (id: number, to: Partial<PicturePoint>) =>
    setPoints((list) => list.map((point) => (point.id === id ? { ...point, ...to } : point)));
  const remove = (id: number) => {
    setPoints((list) => list.filter((point) => point.id !== id));
    setActive(null);
  };
  const shown = points.find(({ id }) => id === active) ?? null;
  const canKeep = look.surfaces.length >= 2 && name.trim() !== '';
  return (
    <dialog ref={dialog} className="picture-look" aria-labelledby={title} onClose={onClose}>
      <header className="picture-look-head">
        <h2 id={title}>{POINTS.title}</h2>
        <p className="small quiet">{POINTS.intro}</p>
      </header>
      <div className="picture-look-body">
        <PicturePlaces
          picture={picture}
          points={points}
          active={active}
          onAdd={add}
          onMove={(id, x, y) => change(id, { x, y })}
          onActive={setActive}
          onRemove={remove}
        />
        <div className="picture-look-side">
          <div className="picture-look-tools">
            <Loupe picture={picture} point={shown} />
            <div className="picture-look-add">
              <button
                type="button"
                className="button button-outlined"
                onClick={() => add(Math.round(picture.width / 2), Math.round(picture.height / 2))}
              >
                {POINTS.add}
              </button>
              <p className="small quiet">{POINTS.hint}</p>
            </div>
          </div>
          <PointList
            points={points}
            colors={colors}
            active={active}
            onChange={change}
            onActive={setActive}
            onRemove={remove}
          />
          <YieldedRelations relations={relations} hasEnough={look.surfaces.length >= 2} />
        </div>
      </div>
      <footer className="picture-look-foot">
        <p className="small quiet">{POINTS.kept}</p>
        {refused.map((problem) => (
          <p key={problem.text} className="small field-wrong" role="alert">
            {problemWords(problem)}
          </p>
        ))}
        <div className="picture-look-acts">
          <label className="field picture-look-name">
            <span>{POINTS.name}</span>
            <input className="input" value={name} onChange={(event) => setName(event.target.value)} />
          </label>
          <button type="button" className="button button-outlined" onClick={() => dialog.current?.close()}>
            {POINTS.cancel}
          </button>
          <button
            type="button"
            className="button button-strong"
            disabled={!canKeep}
            title={canKeep ? undefined : POINTS.needs}
            onClick={() => {
              const problems = onKeep(look);
              setRefused(problems);
              if (problems.length === 0) dialog.current?.close();
            }}
          >
            {POINTS.save}
          </button>
        </div>
      </footer>
    </dialog>
  );
}

/** The relations of a look once it rests; null while they are worked out. */
function useYield(look: CopiedLook, onRelate: PictureLookProps['onRelate']): LookRelations | null {
  const [found, setFound] = useState<{ readonly look: string; readonly relations: LookRelations | null } | null>(null);
  const key = JSON.stringify(look.surfaces);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only its colors make relations
  useEffect(() => {
    if (look.surfaces.length < 2) return;
    let isWanted = true;
    const timer = setTimeout(() => {
      void onRelate(look).then((relations) => {
        if (isWanted) setFound({ look: key, relations });
      });
    }, REST_MS);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [key, onRelate]);
  return found?.look === key ? found.relations : null;
}
