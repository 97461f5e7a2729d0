import type { OutdoorMaterial } from '../../engine/daylight/types';
import type { Problem } from '../../engine/result';
import type { KitchenSite } from '../../model/kitchen';
import { Menu } from '../drawer/Menu';
import { DAYLIGHT } from '../words/daylight';
import { reread } from '../words/spoken';
import { NumberField } from './NumberField';

interface SiteFormProps {
  readonly site: KitchenSite;
  /** Some window looks at a wall across the way. */
  readonly isFacingUsed: boolean;
  readonly onSite: (site: KitchenSite) => readonly Problem[];
}

const MATERIALS = reread(() =>
  (Object.keys(DAYLIGHT.materials) as OutdoorMaterial[]).map((id) => [id, DAYLIGHT.materials[id]] as const),
);

/** What lies around the house, and where on earth it stands. */
export function SiteForm({ site, isFacingUsed, onSite }: SiteFormProps) {
  return (
    <>
      <section className="room-part">
        <h3>{DAYLIGHT.outside}</h3>
        <div className="room-fields">
          <Menu
            label={DAYLIGHT.ground}
            value={site.ground}
            choices={MATERIALS}
            onChoose={(ground) => onSite({ ...site, ground })}
          />
          <Menu
            label={isFacingUsed ? DAYLIGHT.facing : DAYLIGHT.facingUnused}
            isFixed={!isFacingUsed}
            value={site.facing}
            choices={MATERIALS}
            onChoose={(facing) => onSite({ ...site, facing })}
          />
        </div>
        {!isFacingUsed && <p className="small quiet">{DAYLIGHT.facingUnusedNote}</p>}
      </section>
      <section className="room-part">
        <h3>{DAYLIGHT.site}</h3>
        <div className="room-fields">
          <NumberField
            label={DAYLIGHT.latitude}
            value={site.latitude_deg}
            onValue={(latitude_deg) => onSite({ ...site, latitude_deg })}
          />
          <NumberField
            label={DAYLIGHT.longitude}
            value={site.longitude_deg}
            onValue={(longitude_deg) => onSite({ ...site, longitude_deg })}
          />
          <NumberField
            label={DAYLIGHT.clock}
            value={site.utc_offset_h}
            onValue={(utc_offset_h) => onSite({ ...site, utc_offset_h })}
          />
        </div>
      </section>
    </>
  );
}
