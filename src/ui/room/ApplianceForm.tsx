import type { Kitchen, RunWall } from '../../model/kitchen';
import { DAYLIGHT } from '../words/daylight';
import { KITCHEN } from '../words/kitchen';
import { reread } from '../words/spoken';
import type { KitchenLength } from './kitchen-lengths';
import { type KitchenFormProps, LengthFields } from './LengthFields';
import { PickField } from './PickField';

/** Sink and tap, cooktop with hood and oven, dishwasher and fridge. */
export function ApplianceForm(form: KitchenFormProps) {
  const { kitchen, unit, onKitchen } = form;
  const { sink, cooktop } = kitchen;
  const common = { unit, basis: kitchen } as const;
  const set = (change: Partial<Kitchen>) => onKitchen({ ...kitchen, ...change }, false);
  const walls = Object.fromEntries(kitchen.runs.map(({ wall }) => [wall, DAYLIGHT.walls[wall]])) as {
    readonly [W in RunWall]: string;
  };
  return (
    <>
      <section className="room-part">
        <h3>{KITCHEN.sinkName}</h3>
        <LengthFields {...form} lengths={[centerOf('sink', sink.run)]} />
        <div className="room-fields">
          <PickField
            {...common}
            label={KITCHEN.onRun}
            as="menu"
            words={walls}
            chosen={sink.run}
            onPick={(run) => set({ sink: { ...sink, run, center: middleOf(kitchen, run) } })}
          />
          <PickField
            {...common}
            label={KITCHEN.fit}
            as="menu"
            words={KITCHEN.fits}
            chosen={sink.fit}
            onPick={(fit) => set({ sink: { ...sink, fit } })}
          />
        </div>
        <div className="room-row">
          <PickField
            {...common}
            label={KITCHEN.bowls}
            as="row"
            words={BOWLS}
            chosen={`${sink.bowls}`}
            onPick={(bowls) => set({ sink: { ...sink, bowls: bowls === '1' ? 1 : 2 } })}
          />
          <PickField
            {...common}
            label={KITCHEN.tap}
            as="row"
            words={KITCHEN.taps}
            chosen={sink.tap}
            onPick={(tap) => set({ sink: { ...sink, tap } })}
          />
        </div>
      </section>
      <section className="room-part">
        <h3>{KITCHEN.cooktopName}</h3>
        <LengthFields {...form} lengths={[centerOf('cooktop', cooktop.run), COOKTOP_WIDTH]} />
        <div className="room-fields">
          <PickField
            {...common}
            label={KITCHEN.onRun}
            as="menu"
            words={walls}
            chosen={cooktop.run}
            onPick={(run) => set({ cooktop: { ...cooktop, run, center: middleOf(kitchen, run) } })}
          />
          <PickField
            {...common}
            label={KITCHEN.cooktopKind}
            as="menu"
            words={KITCHEN.cooktopKinds}
            chosen={cooktop.kind}
            onPick={(kind) => set({ cooktop: { ...cooktop, kind } })}
          />
        </div>
        <PickField
          {...common}
          label={KITCHEN.hood}
          path="cooktop.hood"
          as="row"
          words={KITCHEN.hoods}
          chosen={cooktop.hood}
          onPick={(hood) => set({ cooktop: { ...cooktop, hood } })}
        />
        <label className="check" data-field="cooktop.oven_below">
          <input
            type="checkbox"
            checked={cooktop.oven_below}
            onChange={(event) => set({ cooktop: { ...cooktop, oven_below: event.target.checked } })}
          />
          {KITCHEN.ovenBelow}
        </label>
      </section>
      <section className="room-part">
        <h3>{KITCHEN.otherAppliances}</h3>
        <div className="room-fields">
          <PickField
            {...common}
            label={KITCHEN.dishwasher}
            path="dishwasher"
            as="menu"
            words={KITCHEN.dishwashers}
            chosen={kitchen.dishwasher}
            onPick={(dishwasher) => set({ dishwasher })}
          />
          <PickField
            {...common}
            label={KITCHEN.fridge}
            path="fridge"
            as="menu"
            words={KITCHEN.fridges}
            chosen={kitchen.fridge}
            onPick={(fridge) => set({ fridge })}
          />
        </div>
      </section>
    </>
  );
}

const BOWLS = { '1': '1', '2': '2' } as const;

const COOKTOP_WIDTH: KitchenLength = reread(() => ({
  path: 'cooktop.width',
  label: KITCHEN.cooktopWidth,
  read: ({ cooktop }) => cooktop.width,
  write: (kitchen, width) => ({ ...kitchen, cooktop: { ...kitchen.cooktop, width } }),
  usual: ({ cooktop }) => cooktop.width,
}));

const centerOf = (what: 'sink' | 'cooktop', run: RunWall): KitchenLength => ({
  path: `${what}.center`,
  label: KITCHEN.middle(run),
  read: (kitchen) => kitchen[what].center,
  most: ({ room }) => (run === 'back' ? room.width : room.depth),
  write: (kitchen, center) => ({ ...kitchen, [what]: { ...kitchen[what], center } }),
});

/** Where something goes that comes to another run: its middle, to the centimeter. */
function middleOf({ runs }: Kitchen, wall: RunWall): number {
  const run = runs.find((one) => one.wall === wall);
  return run ? Math.round((run.from + run.to) / 20) * 10 : 0;
}
