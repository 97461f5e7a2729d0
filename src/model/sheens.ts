/**
 * Words for a sheen and the gloss units at 60 degrees they stand for here, duller first. After the levels of the MPI gloss scale; in the
 * trade the words are loose, the numbers count. Where two meet, the duller one has the number.
 */
export const SHEENS = [
  { id: 'flat', from: 0, to: 5 },
  { id: 'matte', from: 5, to: 10 },
  { id: 'low-sheen', from: 10, to: 20 },
  { id: 'satin', from: 20, to: 35 },
  { id: 'semi-gloss', from: 35, to: 70 },
  { id: 'gloss', from: 70, to: 100 },
] as const;
export type SheenId = (typeof SHEENS)[number]['id'];

/** The word for a gloss reading. */
export const sheenOf = (glossGu: number): SheenId => (SHEENS.find(({ to }) => glossGu <= to) ?? SHEENS.at(-1)!).id;

/** Middles of the MPI gloss levels that go by these words, gloss units at 60 degrees. */
export const SHEEN_GU: { readonly [S in SheenId]: number } = {
  flat: 4,
  matte: 8,
  'low-sheen': 15,
  satin: 28,
  'semi-gloss': 52,
  gloss: 78,
};
