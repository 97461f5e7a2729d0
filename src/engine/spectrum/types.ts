declare const brand: unique symbol;

/** Spectral reflectance, 0-1, on the project's grid: 380-780 nm at 5 nm, 81 samples. */
export type ReflectanceSpd = Float64Array & { readonly [brand]: 'ReflectanceSpd' };

/** Relative spectral power of a light on the same grid; its absolute scale is said by the function that made it. */
export type EmissionSpd = Float64Array & { readonly [brand]: 'EmissionSpd' };
