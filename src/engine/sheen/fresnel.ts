/** Fresnel reflectances of a smooth dielectric for light polarised across (s) and in (p) the plane of incidence, 0-1. */
export interface FresnelPair {
  readonly s: number;
  readonly p: number;
}

/** Fresnel's equations for light from air onto a refractive index above 1; `cosine` of the angle of incidence, 0-1. */
export function fresnelPair(index: number, cosine: number): FresnelPair {
  const inside = Math.sqrt(1 - (1 - cosine * cosine) / (index * index));
  const s = (cosine - index * inside) / (cosine + index * inside);
  const p = (index * cosine - inside) / (index * cosine + inside);
  return { s: s * s, p: p * p };
}

/** Reflectance of a smooth dielectric for unpolarised light, 0-1; `cosine` of the angle of incidence, 0-1. */
export function fresnelUnpolarized(index: number, cosine: number): number {
  const { s, p } = fresnelPair(index, cosine);
  return (s + p) / 2;
}

/**
 * Weight of white in the reflectance of a metal: F = F0 + (1 - F0) weight (C. Schlick, An inexpensive BRDF model for physically-based
 * rendering, 1994). Nobody gives the complex index of a kitchen's metal. Against Fresnel's equations: within 0.02 for silver and
 * copper; for iron and chromium, which dip before they rise, within 0.05 to 60 degrees and up to 0.2 too bright near 83.
 */
export function schlickWeight(cosine: number): number {
  const grazing = 1 - cosine;
  const squared = grazing * grazing;
  return squared * squared * grazing;
}
