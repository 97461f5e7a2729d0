import { type Ref, useLayoutEffect, useRef, useState } from 'react';
import { Choices, type ChoicesProps } from './Choices';
import './fitting-choices.css';

type Fit = 'line' | 'folded' | 'menu';

/** A row of choices as wide as the room there is: in one line, with names in two lines, else a menu of the same. */
export function FittingChoices<Id extends string>(props: ChoicesProps<Id>) {
  const { label, choices, chosen, onChoose } = props;
  const place = useRef<HTMLDivElement>(null);
  const inLine = useRef<HTMLDivElement>(null);
  const folded = useRef<HTMLDivElement>(null);
  const [fit, setFit] = useState<Fit>('line');
  useLayoutEffect(() => {
    const measure = () => {
      const width = place.current!.clientWidth;
      const fits = (ruler: HTMLElement | null) => ruler !== null && ruler.offsetWidth <= width;
      setFit(fits(inLine.current) ? 'line' : fits(folded.current) ? 'folded' : 'menu');
    };
    measure();
    const observer = new ResizeObserver(measure);
    for (const element of [place, inLine, folded]) observer.observe(element.current!);
    return () => observer.disconnect();
  }, []);
  return (
    <div ref={place} className="fitting">
      <div className="fitting-rulers">
        <Ruler choices={choices} fit="line" ref={inLine} />
        <Ruler choices={choices} fit="folded" ref={folded} />
      </div>
      {fit === 'menu' ? (
        <select
          className="select"
          aria-label={label}
          value={chosen}
          onChange={({ target }) => onChoose(target.value as Id)}
        >
          {choices.map(({ id, name, fullName }) => (
            <option key={id} value={id}>
              {fullName ?? name}
            </option>
          ))}
        </select>
      ) : (
        <Choices {...props} className={fit === 'folded' ? 'is-folded' : ''} />
      )}
    </div>
  );
}

interface RulerProps {
  readonly choices: readonly { readonly id: string; readonly name: string }[];
  readonly fit: Fit;
  readonly ref: Ref<HTMLDivElement>;
}

/** The names as they would stand, unseen, to be measured. */
function Ruler({ choices, fit, ref }: RulerProps) {
  return (
    <div ref={ref} className={`choices fitting-ruler ${fit === 'folded' ? 'is-folded' : ''}`} aria-hidden="true">
      {choices.map(({ id, name }) => (
        <span key={id} className="choice">
          <span className="choice-label" data-text={name}>
            {name}
          </span>
        </span>
      ))}
    </div>
  );
}
