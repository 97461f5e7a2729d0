/**
 * A pattern before its shares are fixed: per component 1, 2, 3 of the finish how much the place belongs to it, and the
 * lightness gain around 1. `edge` null: the presence (0-1) is already a weight and is only bent a little to meet the
 * share. Otherwise the presence is any field; where it exceeds a threshold the component is, over a soft edge this wide.
 */
export interface Sheet {
  readonly presence: readonly Float32Array[];
  readonly edge: number | null;
  readonly gain: Float32Array;
}
