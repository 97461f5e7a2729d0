import type { Specular } from '../../engine/finish/given-color';

/**
 * Whether an instrument counted the mirror-like reflection, from what a text says of its geometry: spheres say included or
 * excluded (SCI and SCE, di:8 and de:8 of CIE 15); 45:0 and 0:45 never see it. Null where nothing is said.
 */
export function mirrorPartIn(text: string): Specular | null {
  if (/\bSCI\b|\bRSIN\b|\bdi\s*[:/]\s*8|specular[ _]*(component[ _]*)?includ/i.test(text)) return 'included';
  if (/\bSCE\b|\bRSEX\b|\bde\s*[:/]\s*8|specular[ _]*(component[ _]*)?exclud/i.test(text)) return 'excluded';
  return /(?<!\d)(45\s*°?\s*[acx]?\s*[:/]\s*0|0\s*°?\s*[:/]\s*45)(?!\d)/i.test(text) ? 'excluded' : null;
}
