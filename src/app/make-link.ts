import { encode } from 'uqr';
import { optionFragment } from '../io/link/option-link';
import type { Option, Project } from '../model/project';
import type { MadeLink } from '../ui/projects/LinkPart';

/** Bytes that the largest QR code holds at the lowest level of correction (ISO/IEC 18004, version 40-L). */
const MOST_BYTES = 2953;

/** The address of this page with an option in its fragment, and the QR code of it where it fits. */
export function makeLink(project: Project, option: Option): MadeLink {
  const { origin, pathname } = window.location;
  const href = origin + pathname + optionFragment(project, option);
  const code = href.length > MOST_BYTES ? null : encode(href, { ecc: 'L', border: 0 }).data;
  return { href, code };
}
