import { type DragEvent, type FormEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { yFromLightness } from '../../engine/color/lab';
import type { FinishClass } from '../../engine/finish/types';
import { type PhotoLight, type PhotoReading, readSample } from '../../engine/photo/read-sample';
import type { Problem, Result } from '../../engine/result';
import type { Bounds } from '../../model/check-number';
import { lengthText } from '../../model/length-text';
import type { Finish } from '../../model/project';
import { finishFacts } from '../drawer/finish-facts';
import { Menu } from '../drawer/Menu';
import { mmOf } from '../drawer/mm-text';
import { freeId, GLOSS_GU, type OwnSheen, sheenNear } from '../drawer/own-finish';
import { MOST_LETTERS } from '../drawer/own-name';
import { FIELD } from '../words/daylight';
import { TYPE_IN } from '../words/drawer';
import { CLASS_WORDS } from '../words/finishes';
import { PHOTO } from '../words/photo';
import { retold, unitNow } from '../words/spoken';
import { type PhotoBox, startBoxes } from './boxes';
import { type OpenedPicture, openPicture } from './open-picture';
import { PhotoBoxes } from './PhotoBoxes';
import { type CardKind, PhotoCard } from './PhotoCard';
import { PhotoColors } from './PhotoColors';
import { PhotoFiles } from './PhotoFiles';
import { PhotoZoom } from './PhotoZoom';
import { PHOTO_PATTERNS, type PhotoPattern, photoFinish, USUAL_MM, usualPattern } from './photo-finish';
import './photo.css';

interface PhotoFormProps {
  /** The choice of what one has, above the form's own parts. */
  readonly kinds: ReactNode;
  readonly library: readonly Finish[];
  readonly current: Finish;
  readonly classes: readonly FinishClass[];
  /** Size of one piece where a class comes in pieces. */
  readonly pieceOf: (finishClass: FinishClass) => Finish['piece_mm'];
  readonly onUse: (finish: Finish) => void;
}

const SHEENS = ['flat', 'satin', 'gloss'] as const;
/** A box that moves is read once it rests this long, ms. */
const REST_MS = 150;
const SIZE_MM: Bounds = [1, 2000, 'mm'];
/** Lightness a card may have: darker ones say too little, lighter ones do not exist. */
const CARD_L = [20, 99] as const;

/** A finish from a photo: the card and the sample are marked in it, and what they say is shown before it is used. */
export function PhotoForm({ kinds, library, current, classes, pieceOf, onUse }: PhotoFormProps) {
  const id = useId();
  const [picture, setPicture] = useState<OpenedPicture | null>(null);
  const [problem, setProblem] = useState<Problem | null>(null);
  const [isBusy, setBusy] = useState(false);
  const [boxes, setBoxes] = useState<readonly PhotoBox[]>([]);
  const [cardKind, setCardKind] = useState<CardKind>('gray');
  const [ownL, setOwnL] = useState('');
  const [light, setLight] = useState<PhotoLight>('unknown');
  const [zoom, setZoom] = useState(1);
  const [name, setName] = useState('');
  const [finishClass, setClass] = useState(classes.includes(current.class) ? current.class : (classes[0] ?? 'paint'));
  const [sheen, setSheen] = useState<OwnSheen>(sheenNear(current.gloss_gu));
  const [pattern, setPattern] = useState<PhotoPattern | null>(null);
  const [size, setSize] = useState('');

  const cardL = cardKind === 'own' ? numberIn(ownL, ...CARD_L) : null;
  const cardY =
    cardKind === 'gray' ? 0.18 : cardKind === 'white' ? 0.9 : cardL === null ? null : yFromLightness(cardL) / 100;
  const { reading, isCurrent } = useReading(picture, boxes, light, cardKind === 'none' ? 0 : cardY);

  const latest = useRef<File | null>(null);
  // A form that is closed waits for nothing.
  useEffect(
    () => () => {
      latest.current = null;
    },
    [],
  );
  // Memory outside the page's own is given back at once.
  useEffect(() => () => picture?.shown.close(), [picture]);
  const open = async (file: File) => {
    latest.current = file;
    setBusy(true);
    setProblem(null);
    const opened = await openPicture(file);
    // The one chosen last counts, whichever is decoded first.
    if (latest.current !== file) {
      if (opened.ok) opened.value.shown.close();
      return;
    }
    setBusy(false);
    if (!opened.ok) return setProblem(opened.problem);
    setPicture(opened.value);
    setBoxes(startBoxes(opened.value));
    setZoom(1);
  };
  const onDrop = (event: DragEvent) => {
    event.preventDefault();
    const file = event.dataTransfer.files[0];
    if (file) void open(file);
  };

  const shownPattern = pattern ?? usualPattern(finishClass);
  const unit = unitNow();
  const size_mm = size.trim() === '' ? USUAL_MM[shownPattern] : mmOf(size, SIZE_MM, unit);
  const read = reading?.ok ? reading.value : null;
  const ownId = freeId(library);
  const finish =
    read && size_mm !== null
      ? photoFinish(read, {
          id: ownId,
          name: name.trim() || PHOTO.unnamed,
          class: finishClass,
          gloss_gu: GLOSS_GU[sheen],
          pattern: shownPattern,
          size_mm,
          piece_mm: pieceOf(finishClass),
        })
      : null;
  const facts = finish ? finishFacts(finish) : null;
  const said = problem ?? (reading && !reading.ok ? reading.problem : facts && !facts.ok ? facts.problem : null);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (finish && facts?.ok && isCurrent) onUse(finish);
  };

  return (
    <form
      className="type-in photo"
      onSubmit={submit}
      onDragOver={(event) => event.preventDefault()}
      onDrop={onDrop}
      aria-busy={isBusy}
      noValidate
    >
      <div className="photo-work">
        {kinds}
        <PhotoFiles hasPicture={picture !== null} isBusy={isBusy} onFile={(file) => void open(file)}>
          {picture && <PhotoZoom zoom={zoom} onZoom={setZoom} />}
        </PhotoFiles>
        {picture && (
          <>
            <PhotoCard
              kind={cardKind}
              ownL={ownL}
              isOwnWrong={cardKind === 'own' && ownL.trim() !== '' && cardL === null}
              boxes={boxes}
              size={picture}
              light={light}
              onLight={setLight}
              onKind={setCardKind}
              onOwnL={setOwnL}
              onBoxes={setBoxes}
            />
            <PhotoBoxes
              picture={picture}
              boxes={cardKind === 'none' ? boxes.filter(({ id: box }) => box === 'sample') : boxes}
              zoom={zoom}
              onBox={(box) => setBoxes((before) => before.map((one) => (one.id === box.id ? box : one)))}
            />
          </>
        )}
      </div>
      <div className="type-in-meaning photo-meaning">
        <div className="type-in-head">
          <h3>{TYPE_IN.meaning}</h3>
          <button type="submit" className="button button-strong" disabled={!facts?.ok || !isCurrent}>
            {PHOTO.use}
          </button>
        </div>
        <div aria-live="polite">
          {said && (
            <div className="small">
              <p>
                <strong>{retold(said.text)}</strong>
              </p>
              <p>{retold(said.remedy)}</p>
            </div>
          )}
          {!said && read && <PhotoColors reading={read} hasCard={cardKind !== 'none'} />}
        </div>
        {read && (
          <div className="photo-fields">
            <div className="field">
              <label htmlFor={`${id}-name`}>{TYPE_IN.name}</label>
              <input
                id={`${id}-name`}
                className="input"
                value={name}
                placeholder={PHOTO.unnamed}
                maxLength={MOST_LETTERS}
                onChange={(event) => setName(event.target.value)}
              />
            </div>
            <Menu
              label={TYPE_IN.class}
              value={finishClass}
              choices={classes.map((one) => [one, CLASS_WORDS[one]])}
              onChoose={setClass}
            />
            <Menu
              label={TYPE_IN.sheen}
              value={sheen}
              choices={SHEENS.map((one) => [one, TYPE_IN.sheens[one]])}
              onChoose={setSheen}
            />
            {read.colors.length > 1 && (
              <Menu
                label={PHOTO.pattern}
                value={shownPattern}
                choices={PHOTO_PATTERNS.map((one) => [one, PHOTO.patterns[one]])}
                onChoose={setPattern}
              />
            )}
            {read.colors.length > 1 && shownPattern !== 'grain' && (
              <div className="field">
                <label htmlFor={`${id}-size`}>
                  {FIELD.withUnit(PHOTO.size, FIELD.lengthUnits[unit])}{' '}
                  <span className="quiet">{PHOTO.sizeMeaning[shownPattern]}</span>
                </label>
                <input
                  id={`${id}-size`}
                  className="input"
                  value={size}
                  placeholder={lengthText(USUAL_MM[shownPattern], unit)}
                  inputMode="decimal"
                  autoComplete="off"
                  aria-invalid={size_mm === null}
                  onChange={(event) => setSize(event.target.value)}
                />
                {size_mm === null && <p className="small">{PHOTO.sizeWrong}</p>}
              </div>
            )}
          </div>
        )}
        {!picture && !problem && <p className="small quiet">{PHOTO.stays}</p>}
      </div>
    </form>
  );
}

/** What the boxes say, once they rest, and whether they still lie as read; `cardY` 0: there is no card, null: it is not known how light it is. */
function useReading(
  picture: OpenedPicture | null,
  boxes: readonly PhotoBox[],
  light: PhotoLight,
  cardY: number | null,
): { readonly reading: Result<PhotoReading> | null; readonly isCurrent: boolean } {
  const [read, setRead] = useState<{ readonly of: readonly unknown[]; readonly reading: Result<PhotoReading> } | null>(
    null,
  );
  const of = [picture, boxes, light, cardY];
  useEffect(() => {
    if (!picture || cardY === null) return setRead(null);
    const timer = setTimeout(() => {
      const sample = boxes.find(({ id }) => id === 'sample')!.quad;
      const cards = cardY === 0 ? [] : boxes.filter(({ id }) => id !== 'sample').map(({ quad }) => quad);
      const reading = readSample(picture.linear, { sample, cards, cardY, light });
      setRead({ of: [picture, boxes, light, cardY], reading });
    }, REST_MS);
    return () => clearTimeout(timer);
  }, [picture, boxes, light, cardY]);
  return { reading: read?.reading ?? null, isCurrent: read !== null && of.every((one, i) => one === read.of[i]) };
}

function numberIn(text: string, least: number, most: number): number | null {
  const number = /^\d+([.,]\d+)?$/.test(text.trim()) ? Number(text.trim().replace(',', '.')) : Number.NaN;
  return number >= least && number <= most ? number : null;
}
