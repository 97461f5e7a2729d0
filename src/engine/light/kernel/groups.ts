/** Where the first number of one of many points or rays stands that lie in groups of four: the second four and eight further on. */
export const inGroupsOfFour = (index: number): number => 12 * (index >> 2) + (index & 3);
