const WORDS: Readonly<Record<string, string>> = {
  doorway: 'from the doorway',
  seated: 'from where one sits',
};

/** "from the doorway": where one stands or sits for an overview, as one says it. */
export const fromViewpoint = (id: string): string => WORDS[id] ?? `from the ${id}`;
