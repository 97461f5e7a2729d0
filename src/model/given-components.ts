import type { GivenComponent } from '../engine/finish/component';
import type { Finish } from './project';

/** The colors of a finish as the engine takes them. */
export const givenComponents = (finish: Finish): readonly GivenComponent[] =>
  finish.components.map((component) => ({
    ...component,
    finishClass: finish.class,
    provenance: finish.provenance,
    glossGu: finish.gloss_gu,
    ...(finish.uncertainty_de00 !== undefined && { uncertaintyDe00: finish.uncertainty_de00 }),
  }));
