import { JOINT_MM } from '../../model/laying';

/** What stands in the joint's field, and the joint in the document it was typed over. */
export interface TypedJoint {
  readonly text: string;
  readonly joint_mm: number | undefined;
}

/** The text to show: what was typed, until the document's joint becomes another one (undo, another option). */
export const jointText = (typed: TypedJoint | null, joint_mm: number | undefined): string =>
  typed && typed.joint_mm === joint_mm ? typed.text : String(joint_mm ?? '');

/** The joint a text stands for, mm; null when it is none that can be laid. */
export function jointOf(text: string): number | null {
  const [least, most] = JOINT_MM;
  const width = Number(text);
  return width >= least && width <= most ? width : null;
}
