/** A name for a library by that of its file: without its ending, words apart, the first letter large. */
export function nameFromFile(file: string): string {
  const bare = file
    .replace(/^.*[/\\]/, '')
    .replace(/(\.library)?\.[^.]{1,6}$/i, '')
    .replace(/[_\-+]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const name = bare === '' ? file : bare;
  return name.charAt(0).toUpperCase() + name.slice(1);
}

/** A name that no library has yet: the name itself, or the name with the next number. */
export function freeName(name: string, taken: readonly string[]): string {
  const known = new Set(taken.map((one) => one.toLowerCase()));
  for (let n = 1; ; n++) {
    const free = n === 1 ? name : `${name} ${n}`;
    if (!known.has(free.toLowerCase())) return free;
  }
}
