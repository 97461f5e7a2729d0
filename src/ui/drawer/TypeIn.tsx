import { type FormEvent, use, useId, useState } from 'react';
import type { FinishClass, Provenance } from '../../engine/finish/types';
import type { Finish } from '../../model/project';
import { Choices } from '../parts/Choices';
import { Locked } from '../parts/locked';
import { PhotoForm } from '../photo/PhotoForm';
import { TYPE_IN } from '../words/drawer';
import { CLASS_WORDS } from '../words/finishes';
import { reread } from '../words/spoken';
import { ColorBox } from './ColorBox';
import { ColorDetails } from './ColorDetails';
import { finishFacts } from './finish-facts';
import { Menu } from './Menu';
import {
  GLOSS_GU,
  isNumbers,
  type OwnFinishEntry,
  ownFinish,
  provenanceOf,
  sheenNear,
  withGloss,
  withKind,
} from './own-finish';
import { MOST_LETTERS, nameOfGiven } from './own-name';
import { TypeInMeaning } from './TypeInMeaning';

interface TypeInProps {
  readonly library: readonly Finish[];
  /** What lies there now; a tile typed in takes its size and sheen from a tile it replaces. */
  readonly current: Finish;
  readonly classes: readonly FinishClass[];
  readonly onUse: (finish: Finish) => void;
}

/** Kinds in the row of choices; which numbers they are is a menu of its own. */
const KINDS = reread(() =>
  (['numbers', 'munsell', 'hex', 'lrv', 'spectrum', 'photo'] as const).map((id) => ({
    id,
    name: TYPE_IN.kinds[id],
  })),
);
/** These bring a file in. */
const FROM_FILES: readonly string[] = ['spectrum', 'photo'];
const SHEENS = ['flat', 'satin', 'gloss'] as const;
const PROVENANCES: readonly Provenance[] = ['measured', 'declared', 'photo-with-card', 'photo', 'by-eye'];

/** What comes in tiles. */
const TILE_CLASSES: readonly FinishClass[] = ['glazed', 'porcelain'];

/** A color from outside the library, and what that means for how sure the answers can be, before it is used. */
export function TypeIn({ library, current, classes, onUse }: TypeInProps) {
  const [entry, setEntry] = useState<OwnFinishEntry>({
    kind: 'lab',
    value: '',
    name: '',
    class: classes.includes(current.class) ? current.class : (classes[0] ?? 'paint'),
    sheen: sheenNear(current.gloss_gu),
  });
  const [isPhoto, setPhoto] = useState(false);
  const isLocked = use(Locked);
  const id = useId();
  const change = (changes: Partial<OwnFinishEntry>) => setEntry((before) => ({ ...before, ...changes }));
  const choose = (kind: (typeof KINDS)[number]['id']) => {
    setPhoto(kind === 'photo');
    if (kind !== 'photo') setEntry((before) => withKind(before, kind === 'numbers' ? 'lab' : kind));
  };
  const pieceOf = (one: FinishClass) =>
    TILE_CLASSES.includes(one) && one === current.class ? current.piece_mm : undefined;
  const piece_mm = pieceOf(entry.class);
  const isEmpty = entry.kind === 'spectrum' ? !entry.spectrum : entry.value.trim() === '';
  const made = isEmpty ? null : ownFinish({ ...entry, piece_mm }, library);
  const facts = made?.ok ? finishFacts(made.value) : null;
  const problem = made && !made.ok ? made.problem : facts && !facts.ok ? facts.problem : null;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (made?.ok && facts?.ok) onUse(made.value);
  };
  const known: readonly Provenance[] = entry.kind === 'hex' ? ['screen'] : PROVENANCES;
  const kinds = (
    <Choices
      label={TYPE_IN.kind}
      choices={isLocked ? KINDS.filter((one) => !FROM_FILES.includes(one.id)) : KINDS}
      chosen={isPhoto ? 'photo' : isNumbers(entry.kind) ? 'numbers' : entry.kind}
      onChoose={choose}
    />
  );
  if (isPhoto) {
    return <PhotoForm {...{ kinds, library, current, classes, pieceOf, onUse }} />;
  }
  return (
    <form className="type-in" onSubmit={submit} noValidate>
      <div className="type-in-fields">
        {kinds}
        <ColorBox entry={entry} isWrong={problem !== null} meaningId={`${id}-meaning`} onEntry={setEntry} />
        <div className="field type-in-name">
          <label htmlFor={`${id}-name`}>{TYPE_IN.name}</label>
          <input
            id={`${id}-name`}
            className="input"
            value={entry.name}
            placeholder={
              made?.ok ? nameOfGiven(made.value.components[0]!.color, entry.spectrum?.file) : TYPE_IN.nameHint
            }
            maxLength={MOST_LETTERS}
            onChange={(event) => change({ name: event.target.value })}
          />
        </div>
        <Menu
          label={TYPE_IN.class}
          value={entry.class}
          choices={classes.map((one) => [one, CLASS_WORDS[one]])}
          onChoose={(one) => change({ class: one })}
        />
        <Menu
          label={TYPE_IN.sheen}
          value={entry.sheen}
          choices={SHEENS.map((one) => [one, TYPE_IN.sheens[one]])}
          onChoose={(sheen) => change({ sheen, gloss: '' })}
        />
        <div className="field">
          <label htmlFor={`${id}-gloss`}>{TYPE_IN.gloss}</label>
          <input
            id={`${id}-gloss`}
            className="input"
            value={entry.gloss ?? ''}
            placeholder={TYPE_IN.glossHint(GLOSS_GU[entry.sheen])}
            inputMode="decimal"
            autoComplete="off"
            onChange={(event) => setEntry((before) => withGloss(before, event.target.value))}
          />
        </div>
        <Menu
          label={TYPE_IN.provenance}
          value={provenanceOf(entry)}
          choices={known.map((one) => [one, TYPE_IN.provenances[one]])}
          isFixed={entry.kind === 'hex' || entry.kind === 'lrv'}
          onChoose={(one) => change({ provenance: one })}
        />
        <ColorDetails entry={entry} onChange={change} />
      </div>
      <div className="type-in-meaning" id={`${id}-meaning`} aria-live="polite">
        <div className="type-in-head">
          <h3>{TYPE_IN.meaning}</h3>
          <button type="submit" className="button button-strong" disabled={!made?.ok || !facts?.ok}>
            {TYPE_IN.use}
          </button>
        </div>
        <TypeInMeaning
          finish={made?.ok && facts?.ok ? made.value : null}
          facts={facts?.ok ? facts.value : null}
          read={made?.ok ? (made.notices ?? []) : []}
          problem={problem}
          empty={entry.kind === 'spectrum' ? TYPE_IN.emptySpectrum : TYPE_IN.empty}
        />
      </div>
    </form>
  );
}
