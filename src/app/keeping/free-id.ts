/** An id like another one that none of them is. */
export function freeId(ids: readonly string[], like: string): string {
  const base = like.replace(/-copy(-\d+)?$/, '');
  for (let count = 1; ; count++) {
    const id = count === 1 ? `${base}-copy` : `${base}-copy-${count}`;
    if (!ids.includes(id)) return id;
  }
}
