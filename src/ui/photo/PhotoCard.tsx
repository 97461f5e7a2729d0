import { useId } from 'react';
import type { PhotoLight } from '../../engine/photo/read-sample';
import { Menu } from '../drawer/Menu';
import { Choices } from '../parts/Choices';
import { PHOTO } from '../words/photo';
import { reread } from '../words/spoken';
import { boxAt, type PhotoBox, type PictureSize } from './boxes';

export type CardKind = keyof typeof PHOTO.cardKinds;

interface PhotoCardProps {
  readonly kind: CardKind;
  readonly ownL: string;
  readonly isOwnWrong: boolean;
  readonly boxes: readonly PhotoBox[];
  readonly size: PictureSize;
  readonly light: PhotoLight;
  readonly onLight: (light: PhotoLight) => void;
  readonly onKind: (kind: CardKind) => void;
  readonly onOwnL: (text: string) => void;
  readonly onBoxes: (boxes: readonly PhotoBox[]) => void;
}

const LIGHTS: readonly PhotoLight[] = ['unknown', 'daylight', 'lamps'];
const KINDS = reread(() =>
  (['gray', 'white', 'own', 'none'] as const).map((id) => ({ id, name: PHOTO.cardKinds[id] })),
);

/** Which card lies in the picture, and a second place for it. */
export function PhotoCard(props: PhotoCardProps) {
  const { kind, ownL, isOwnWrong, boxes, size } = props;
  const id = useId();
  const hasSecond = boxes.some((box) => box.id === 'card-second');
  const toggle = () =>
    props.onBoxes(
      hasSecond
        ? boxes.filter((box) => box.id !== 'card-second')
        : [...boxes, { id: 'card-second', quad: boxAt(size, 0.9, 0.35, 0.98, 0.65) }],
    );
  return (
    <div className="photo-tools">
      <Choices label={PHOTO.cardKind} choices={KINDS} chosen={kind} onChoose={props.onKind} />
      {kind === 'own' && (
        <div className="field photo-own">
          <label htmlFor={id}>{PHOTO.ownL}</label>
          <input
            id={id}
            className="input"
            value={ownL}
            inputMode="decimal"
            autoComplete="off"
            aria-invalid={isOwnWrong}
            onChange={(event) => props.onOwnL(event.target.value)}
          />
          {isOwnWrong && (
            <p className="small">
              {PHOTO.ownWrong(ownL)} {PHOTO.ownRemedy}
            </p>
          )}
        </div>
      )}
      <Menu
        label={PHOTO.light}
        value={props.light}
        choices={LIGHTS.map((one) => [one, PHOTO.lights[one]])}
        onChoose={props.onLight}
      />
      {kind !== 'none' && (
        <button type="button" className="button button-outlined" onClick={toggle}>
          {hasSecond ? PHOTO.removeCard : PHOTO.addCard}
        </button>
      )}
    </div>
  );
}
