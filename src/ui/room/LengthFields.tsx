import type { Problem } from '../../engine/result';
import type { Kitchen } from '../../model/kitchen';
import { kitchenBounds } from '../../model/kitchen-bounds';
import type { LengthUnit } from '../../model/length-text';
import { kitchenDefaults } from '../../model/new-kitchen/kitchen-defaults';
import type { Loss } from '../../model/new-kitchen/losses';
import { KITCHEN } from '../words/kitchen';
import { reread } from '../words/spoken';
import type { KitchenLength } from './kitchen-lengths';
import { LengthField } from './LengthField';

/** What every form of the kitchen works with. */
export interface KitchenFormProps {
  readonly kitchen: Kitchen;
  readonly unit: LengthUnit;
  readonly onKitchen: OnKitchen;
}

/** Takes a kitchen. `continues`: the change belongs to the one before (a drag is one step); `losses`: what did not fit along. */
export type OnKitchen = (kitchen: Kitchen, continues: boolean, losses?: readonly Loss[]) => readonly Problem[];

const NOTHING_FITS: readonly Problem[] = reread(() => [
  { code: 'does-not-fit', text: KITCHEN.roomTooSmall, remedy: KITCHEN.roomRemedy },
]);

/** Fields for lengths of the kitchen. */
export function LengthFields({ lengths, ...form }: KitchenFormProps & { readonly lengths: readonly KitchenLength[] }) {
  const { kitchen } = form;
  const defaults = kitchenDefaults(kitchen.region);
  return (
    <div className="room-fields">
      {lengths.map(({ path, label, read, write, usual, most }) => {
        const bounds = kitchenBounds(path);
        if (!bounds) throw new Error(`no length of a kitchen stands at "${path}"`);
        const [low, high] = bounds;
        return (
          <LengthField
            key={path}
            label={label}
            path={path}
            unit={form.unit}
            value={read(kitchen)}
            allowed={[low, Math.min(high, most?.(kitchen) ?? high)]}
            {...(usual ? { usual: usual(defaults) } : {})}
            basis={kitchen}
            onValue={(mm, continues) => {
              const next = write(kitchen, mm);
              if (!next) return NOTHING_FITS;
              return 'losses' in next
                ? form.onKitchen(next.kitchen, continues, next.losses)
                : form.onKitchen(next, continues);
            }}
          />
        );
      })}
    </div>
  );
}
