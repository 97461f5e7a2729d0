import { labD65FromXyzD65 } from '../../engine/color/lab';
import type { Lab } from '../../engine/color/types';
import { UNCERTAINTY_DE00 } from '../../engine/finish/uncertainty';
import { undertoneOf } from '../../engine/naming/undertone';
import type { PhotoColor, PhotoReading } from '../../engine/photo/read-sample';
import { isLeanSure } from '../../engine/photo/sure-lean';
import { Swatch } from '../swatch/Swatch';
import { flatPaint } from '../swatch/swatch-color';
import { PROVENANCE_WORDS } from '../words/finishes';
import { decimal, labText } from '../words/numbers';
import { FLAG_WORDS, PHOTO } from '../words/photo';
import { READING } from '../words/reading';
import { retold } from '../words/spoken';

interface PhotoColorsProps {
  readonly reading: PhotoReading;
  readonly hasCard: boolean;
}

const SWATCH_PX = 44;

/** What a photo says: its colors beside what the photo shows, how far they can be trusted, and what is wrong with the photo. */
export function PhotoColors({ reading, hasCard }: PhotoColorsProps) {
  const { colors, flags, provenance, uncertaintyDe00 } = reading;
  const usual = UNCERTAINTY_DE00[hasCard ? 'photo-with-card' : 'photo'];
  return (
    <div className="photo-colors small">
      {!hasCard && <p>{PHOTO.withoutCard}</p>}
      {hasCard && <p className="quiet">{PHOTO.swatches}</p>}
      <ol className="photo-list">
        {colors.map((color, i) => (
          <ColorRow
            key={i === 0 ? 'base' : i}
            name={i === 0 ? PHOTO.base : PHOTO.other(i + 1)}
            color={color}
            hasCard={hasCard}
            uncertaintyDe00={uncertaintyDe00}
          />
        ))}
      </ol>
      {colors.length > 1 && <p className="quiet">{PHOTO.soft}</p>}
      <p>
        {PHOTO.trust(PROVENANCE_WORDS[provenance], decimal(uncertaintyDe00))}
        {uncertaintyDe00 > usual + 0.05 && ` ${PHOTO.added(decimal(usual))}`}
      </p>
      {flags.length === 0 ? (
        <p className="quiet">{PHOTO.noFlags}</p>
      ) : (
        <ul className="photo-flags" aria-label={PHOTO.flags}>
          {flags.map((flag) => (
            <li key={flag.code} data-flag={flag.code}>
              <strong>{FLAG_WORDS[flag.code].text(flag)}</strong> {FLAG_WORDS[flag.code].remedy}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

interface ColorRowProps {
  readonly name: string;
  readonly color: PhotoColor;
  readonly hasCard: boolean;
  readonly uncertaintyDe00: number;
}

function ColorRow({ name, color, hasCard, uncertaintyDe00 }: ColorRowProps) {
  const { lab, rawLab, share } = color;
  return (
    <li className="photo-color">
      <div className="photo-swatches">
        {hasCard && (
          <figure>
            <Swatch paint={flatPaint(tripleOf(rawLab))} width={SWATCH_PX} height={SWATCH_PX} />
            <figcaption className="hidden-visually">{PHOTO.raw}</figcaption>
          </figure>
        )}
        <figure>
          <Swatch paint={flatPaint(tripleOf(lab))} width={SWATCH_PX} height={SWATCH_PX} />
          <figcaption className="hidden-visually">{hasCard ? PHOTO.corrected : PHOTO.raw}</figcaption>
        </figure>
      </div>
      <p>
        <strong>{name}</strong>, {PHOTO.share(share)}: {colorWords(lab, uncertaintyDe00)}.
        <br />
        {READING.labOf(labText(tripleOf(lab)))}
      </p>
    </li>
  );
}

/** The name of a color, as firm as its uncertainty lets it be. */
function colorWords(lab: Lab<'D65-2'>, uncertaintyDe00: number): string {
  const { name: usName, level } = undertoneOf(held(lab));
  const name = retold(usName);
  if (isLeanSure(held(lab), uncertaintyDe00)) return name;
  return level === 'color' ? PHOTO.about(name) : PHOTO.leanMay(name);
}

/** Black or white where noise led beyond it, so that it has a name. */
const held = (lab: Lab<'D65-2'>): Lab<'D65-2'> =>
  lab.l <= 0 ? labD65FromXyzD65({ x: 0, y: 0, z: 0 }) : { ...lab, l: Math.min(100, lab.l) };

const tripleOf = ({ l, a, b }: Lab<'D65-2'>): readonly [number, number, number] => [l, a, b];
