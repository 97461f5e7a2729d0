import { ASSUMPTION_BOUNDS, type QuantityAssumptions, USUAL_ASSUMPTIONS } from '../../model/quantity/assumptions';
import { Menu } from '../drawer/Menu';
import { LENGTH, type Measure, PLAIN } from '../room/measures';
import { NumberField } from '../room/NumberField';
import { ASSUMED } from '../words/schedule';
import { ITEM } from '../words/schedule-item';
import { AREA, SPREAD } from './measures';
import type { ScheduleDoors } from './schedule-props';

type NumberName = keyof typeof ASSUMPTION_BOUNDS;

/** What quantities rest on besides the kitchen: usual values, each to be changed. */
export function AssumedForm({ assumptions, onAssumptions }: ScheduleDoors) {
  const change = (changes: Partial<QuantityAssumptions>) => onAssumptions({ ...assumptions, ...changes });
  const without = (name: keyof QuantityAssumptions) => {
    const { [name]: _, ...rest } = assumptions;
    onAssumptions(rest);
  };
  const number = (name: NumberName, label: string, unit?: string, measure: Measure = PLAIN) => {
    const [least, most] = ASSUMPTION_BOUNDS[name];
    return (
      <NumberField
        label={label}
        measure={measure}
        {...(unit !== undefined && { unit })}
        value={assumptions[name] ?? null}
        hint={ASSUMED.usual(measure.text(USUAL_ASSUMPTIONS[name]))}
        onValue={(value) => {
          if (value < least || value > most)
            return [
              { code: 'out-of-range', text: ASSUMED.between(measure.text(least), measure.text(most)), remedy: '' },
            ];
          change({ [name]: value });
          return [];
        }}
        onEmpty={() => {
          without(name);
          return [];
        }}
      />
    );
  };
  const counts = { ...USUAL_ASSUMPTIONS, ...assumptions };
  const check = (name: 'match_seams' | 'paint_behind_units', label: string) => (
    <label className="check">
      <input type="checkbox" checked={counts[name]} onChange={({ target }) => change({ [name]: target.checked })} />
      {label}
    </label>
  );
  return (
    <div className="assumed">
      <p className="small assumed-intro">{ASSUMED.intro}</p>
      <section>
        <h3>{ASSUMED.floor}</h3>
        <Menu
          label={ASSUMED.floorReach}
          value={counts.floor_reach}
          choices={[
            ['under-units', ASSUMED.floorReaches['under-units']],
            ['to-plinth', ASSUMED.floorReaches['to-plinth']],
          ]}
          onChoose={(reach) => change({ floor_reach: reach })}
        />
      </section>
      <section>
        <h3>{ASSUMED.slabs}</h3>
        {number('slab_trim_mm', ASSUMED.trim, undefined, LENGTH)}
        {number('kerf_mm', ASSUMED.kerf, undefined, LENGTH)}
        {number('shortest_part_mm', ASSUMED.shortest, undefined, LENGTH)}
        {number('seam_clear_mm', ASSUMED.seamClear, undefined, LENGTH)}
        {check('match_seams', ASSUMED.matchSeams)}
      </section>
      <section>
        <h3>{ASSUMED.walls}</h3>
        {number('wall_coats', ASSUMED.coats)}
        {number('wall_spread_m2_per_l', ASSUMED.spread, undefined, SPREAD)}
        {number('least_opening_m2', ASSUMED.leastOpening, undefined, AREA)}
        {check('paint_behind_units', ASSUMED.behindUnits)}
        {number('paint_waste_percent', ASSUMED.paintWaste, ITEM.percent)}
      </section>
      <section>
        <h3>{ASSUMED.fronts}</h3>
        <Menu
          label={ASSUMED.faces}
          value={counts.coated_faces}
          choices={[
            ['both', ASSUMED.facesOf.both],
            ['front', ASSUMED.facesOf.front],
          ]}
          onChoose={(faces) => change({ coated_faces: faces })}
        />
        {number('front_coats', ASSUMED.coats)}
        {number('front_spread_m2_per_l', ASSUMED.spread, undefined, SPREAD)}
      </section>
      <section>
        <h3>{ASSUMED.grout}</h3>
        {number('grout_depth_mm', ASSUMED.depth, undefined, LENGTH)}
        {number('grout_kg_per_l', ASSUMED.density, ASSUMED.densityUnit)}
        {number('grout_waste_percent', ASSUMED.groutWaste, ITEM.percent)}
      </section>
      <section>
        <h3>{ASSUMED.spares}</h3>
        {number('spare_packs', ASSUMED.sparePacks)}
      </section>
      <button
        type="button"
        className="button button-outlined assumed-back"
        disabled={Object.keys(assumptions).length === 0}
        onClick={() => onAssumptions({})}
      >
        {ASSUMED.back}
      </button>
    </div>
  );
}
