import { useState } from 'react';
import type { Provenance } from '../../engine/finish/types';
import type { Library } from '../../model/library';
import { countSame, mergeFinishes, type OnSame } from '../../model/merge-finishes';
import type { Finish, Supply } from '../../model/project';
import { Menu } from '../drawer/Menu';
import { TYPE_IN } from '../words/drawer';
import { LIBRARIES, mergedWords, ON_SAME, RANGE } from '../words/libraries';
import { bandWords } from '../words/price';
import { reread } from '../words/spoken';
import { type BulkChange, bulkEdit, tagsIn } from './bulk-edit';
import { NONE_CHOSEN } from './choose-rows';
import { tagsOf } from './range-filters';
import type { RangeLook } from './range-look';
import type { LibraryEditor } from './use-editor';

interface ChosenBarProps {
  readonly library: Library;
  readonly chosen: readonly Finish[];
  readonly others: readonly Library[];
  readonly editor: LibraryEditor;
  readonly onLook: (change: (before: RangeLook) => RangeLook) => void;
}

const PRICES = ['none', '$', '$$', '$$$'] as const;
const PROVENANCES: readonly Provenance[] = ['measured', 'declared', 'photo-with-card', 'photo', 'by-eye', 'screen'];
const SAMES = reread(() => (['both', 'replace', 'skip'] as const).map((one) => [one, ON_SAME[one]] as const));

/** What can be done with the chosen finishes. Each menu acts at once and can be undone. */
export function ChosenBar({ library, chosen, others, editor, onLook }: ChosenBarProps) {
  const [tag, setTag] = useState('');
  const [words, setWords] = useState('');
  const [target, setTarget] = useState('');
  const [onSame, setOnSame] = useState<OnSame>('skip');
  const [fold, setFold] = useState<'change' | 'copy' | null>(null);
  const ids = new Set(chosen.map(({ id }) => id));
  const run = (change: BulkChange) =>
    editor.setFinishes(library, bulkEdit(library.finishes, ids, change), LIBRARIES.labels.bulk(change, chosen.length));
  const tags = tagsIn(tag);
  const runTags = async (kind: 'add-tag' | 'remove-tag') => {
    const finishes = tags.reduce((before, one) => bulkEdit(before, ids, { kind, tag: one }), library.finishes);
    const label = LIBRARIES.labels.bulk({ kind, tag }, chosen.length);
    if (await editor.setFinishes(library, finishes, label)) setTag('');
  };
  const to = others.find(({ id }) => id === target);
  const same = to ? countSame(to.finishes, chosen) : 0;
  const copy = async () => {
    if (!to) return;
    const merged = mergeFinishes(to.finishes, chosen, onSame);
    const isDone = await editor.setFinishes(to, merged.finishes, LIBRARIES.labels.copy(chosen.length, to.name));
    if (isDone) editor.say(RANGE.copied(mergedWords(merged)));
  };
  return (
    <section className="chosen" aria-label={RANGE.chosen(chosen.length)}>
      <div className="chosen-count">
        <strong role="status">{RANGE.chosen(chosen.length)}</strong>
        {(['change', 'copy'] as const).map((one) => (
          <button
            key={one}
            type="button"
            className="button button-outlined"
            aria-expanded={fold === one}
            onClick={() => setFold(fold === one ? null : one)}
          >
            {one === 'change' ? RANGE.change : RANGE.copyOpen}
          </button>
        ))}
        <button type="button" className="button button-outlined" onClick={() => void run({ kind: 'remove' })}>
          {RANGE.removeChosen}
        </button>
        <button
          type="button"
          className="button button-plain"
          onClick={() => onLook((before) => ({ ...before, chosen: NONE_CHOSEN }))}
        >
          {RANGE.chooseNone}
        </button>
      </div>
      {fold === 'change' && (
        <div className="chosen-acts">
          <form
            className="chosen-act"
            onSubmit={(event) => {
              event.preventDefault();
              if (tags.length > 0) void runTags('add-tag');
            }}
          >
            <label className="field">
              <span className="label">{RANGE.bulkTag}</span>
              <input
                className="input"
                list="tags-of-library"
                value={tag}
                maxLength={40}
                onChange={(event) => setTag(event.target.value)}
              />
            </label>
            <datalist id="tags-of-library">
              {tagsOf(library.finishes).map((one) => (
                <option key={one} value={one} />
              ))}
            </datalist>
            <button type="submit" className="button button-outlined" disabled={tags.length === 0}>
              {RANGE.addTag}
            </button>
            <button
              type="button"
              className="button button-outlined"
              disabled={!chosen.some((finish) => tags.some((one) => finish.tags?.includes(one)))}
              onClick={() => void runTags('remove-tag')}
            >
              {RANGE.removeTag}
            </button>
          </form>
          <Menu<string>
            label={RANGE.bulkPrice}
            value=""
            choices={[
              ['', RANGE.leave],
              ...PRICES.map((one) => [one, one === 'none' ? RANGE.noPrice : bandWords(one)] as const),
            ]}
            onChoose={(band) =>
              band !== '' && void run({ kind: 'price', band: band === 'none' ? null : (band as Supply['price_band']) })
            }
          />
          <form
            className="chosen-act"
            onSubmit={(event) => {
              event.preventDefault();
              void run({ kind: 'availability', words }).then((isDone) => isDone && setWords(''));
            }}
          >
            <label className="field">
              <span className="label">{RANGE.bulkAvailability}</span>
              <input
                className="input"
                value={words}
                maxLength={80}
                onChange={(event) => setWords(event.target.value)}
              />
            </label>
            <button type="submit" className="button button-outlined">
              {RANGE.apply}
            </button>
          </form>
          <Menu<string>
            label={RANGE.bulkProvenance}
            value=""
            choices={[['', RANGE.leave], ...PROVENANCES.map((one) => [one, TYPE_IN.provenances[one]] as const)]}
            onChoose={(one) => one !== '' && void run({ kind: 'provenance', provenance: one as Provenance })}
          />
        </div>
      )}
      {fold === 'copy' && (
        <div className="chosen-act">
          <Menu<string>
            label={RANGE.copyTo}
            value={target}
            choices={[['', RANGE.noTarget], ...others.map(({ id, name }) => [id, name] as const)]}
            onChoose={setTarget}
          />
          {same > 0 && <Menu label={RANGE.onSame} value={onSame} choices={SAMES} onChoose={setOnSame} />}
          <button type="button" className="button button-outlined" disabled={!to} onClick={() => void copy()}>
            {RANGE.copy}
          </button>
        </div>
      )}
    </section>
  );
}
