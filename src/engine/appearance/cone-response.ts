type Triple = readonly [number, number, number];

// Post-adaptation compression of CIECAM02 and CAM16 (CIE 159:2004, equation 16). The models add 0.1 to each response, which
// cancels in opponent colours and in the achromatic response (its -0.305); it is left out here and stands as 0.305 in the
// one sum where it stays.

/** Cone responses after compression, 0-400; a negative response is compressed like its amount, as the models say. */
export const compressed = (cones: Triple, fl: number): [number, number, number] => [
  compress(cones[0], fl),
  compress(cones[1], fl),
  compress(cones[2], fl),
];

/** Cone responses of which `responses` are the compressed ones. */
export const expanded = (responses: Triple, fl: number): [number, number, number] => [
  expand(responses[0], fl),
  expand(responses[1], fl),
  expand(responses[2], fl),
];

function compress(cone: number, fl: number): number {
  const power = ((fl * Math.abs(cone)) / 100) ** 0.42;
  return (Math.sign(cone) * 400 * power) / (power + 27.13);
}

function expand(response: number, fl: number): number {
  const amount = Math.abs(response);
  return Math.sign(response) * (100 / fl) * ((27.13 * amount) / (400 - amount)) ** (1 / 0.42);
}
