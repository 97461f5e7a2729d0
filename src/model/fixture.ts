/** Lamps that dim together and share one spectrum. */
export type LampGroup = 'ceiling' | 'under-cabinet' | 'pendant' | 'hood';

/** How a lamp spreads its light: evenly as a matte face does, in a beam, or as a file says. */
export type BeamChoice =
  | { readonly kind: 'wide' }
  /** Full angle within which intensity is at least half its peak. */
  | { readonly kind: 'spread'; readonly angle_deg: number }
  /** Id of a beam of the project. */
  | { readonly kind: 'file'; readonly beam: string; readonly turn_deg: number };

export type FixtureKind = 'downlight' | 'panel' | 'strip' | 'pendant' | 'under-cabinet' | 'hood';

/** Middle of a lamp on the plan from the front left corner, mm. */
export type PlanPoint = readonly [x: number, y: number];

interface FixtureBase {
  readonly id: string;
  /** Lamps of one group dim together. */
  readonly group: LampGroup;
  readonly beam: BeamChoice;
}

/** Lamps of one kind in a kitchen. Lengths in mm; lumens are those that leave the lamp at full level. */
export type Fixture =
  | (FixtureBase & {
      readonly kind: 'downlight';
      readonly count: number;
      readonly diameter: number;
      readonly lumens_each: number;
      /** Where they sit; spread evenly where absent. */
      readonly at?: readonly PlanPoint[];
    })
  | (FixtureBase & {
      readonly kind: 'panel';
      readonly count: number;
      readonly width: number;
      readonly length: number;
      readonly lumens_each: number;
      readonly at?: readonly PlanPoint[];
    })
  | (FixtureBase & {
      readonly kind: 'pendant';
      readonly count: number;
      readonly diameter: number;
      /** Lower edge of the shade above the floor. */
      readonly height: number;
      readonly lumens_each: number;
      /** Where they hang; in a row over the island where absent. */
      readonly at?: readonly PlanPoint[];
    })
  | (FixtureBase & {
      readonly kind: 'strip';
      /** On top of the wall units, shining up; or in the toe kick, shining down. */
      readonly run: 'above-wall-units' | 'toe-kick';
      readonly width: number;
      readonly lumens_per_m: number;
    })
  | (FixtureBase & {
      readonly kind: 'under-cabinet';
      readonly run: 'front' | 'middle' | 'back';
      readonly width: number;
      readonly lumens_per_m: number;
    })
  | (FixtureBase & {
      readonly kind: 'hood';
      readonly count: number;
      readonly diameter: number;
      readonly lumens_each: number;
    });
