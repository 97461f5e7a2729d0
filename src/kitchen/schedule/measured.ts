import type { Finish, Option } from '../../model/project';
import type { QuantityAssumptions } from '../../model/quantity/assumptions';
import type { Takeoff } from '../takeoff/types';

/** Everything that quantities of an option's items rest on. */
export interface Measured {
  readonly option: Option;
  readonly library: ReadonlyMap<string, Finish>;
  readonly takeoff: Takeoff;
  readonly assumptions: QuantityAssumptions;
}
