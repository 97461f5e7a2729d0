import { Minus, Plus } from 'lucide-react';
import { useId } from 'react';
import { Choices } from '../parts/Choices';
import { PHOTO } from '../words/photo';
import { boxAt, type PhotoBox, type PictureSize } from './boxes';

export type CardKind = keyof typeof PHOTO.cardKinds;

interface PhotoCardProps {
  readonly kind: CardKind;
  readonly ownL: string;
  readonly isOwnWrong: boolean;
  readonly boxes: readonly PhotoBox[];
  readonly size: PictureSize;
  readonly zoom: number;
  readonly onKind: (kind: CardKind) => void;
  readonly onOwnL: (text: string) => void;
  readonly onBoxes: (boxes: readonly PhotoBox[]) => void;
  readonly onZoom: (zoom: number) => void;
}

const KINDS = (['gray', 'white', 'own', 'none'] as const).map((id) => ({ id, name: PHOTO.cardKinds[id] }));
const MOST_ZOOM = 8;

/** Which card lies in the picture, a second place for it, and how near one looks. */
export function PhotoCard(props: PhotoCardProps) {
  const { kind, ownL, isOwnWrong, boxes, size, zoom } = props;
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
      {kind !== 'none' && (
        <button type="button" className="button button-outlined" onClick={toggle}>
          {hasSecond ? PHOTO.removeCard : PHOTO.addCard}
        </button>
      )}
      <span className="photo-zoom">
        <button
          type="button"
          className="button button-outlined"
          aria-label={PHOTO.zoomOut}
          disabled={zoom <= 1}
          onClick={() => props.onZoom(zoom / 2)}
        >
          <Minus className="icon" aria-hidden="true" />
        </button>
        <button
          type="button"
          className="button button-outlined"
          aria-label={PHOTO.zoomIn}
          disabled={zoom >= MOST_ZOOM}
          onClick={() => props.onZoom(zoom * 2)}
        >
          <Plus className="icon" aria-hidden="true" />
        </button>
      </span>
    </div>
  );
}
