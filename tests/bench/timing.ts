/** Runs work some times after one warm-up and prints the median beside its budget, if it has one. */
export function median<T>(name: string, budget_ms: number | null, runs: number, work: () => T): T {
  let result = work();
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    result = work();
    times.push(performance.now() - start);
  }
  report(name, budget_ms, times);
  return result;
}

export function report(name: string, budget_ms: number | null, times: readonly number[]): void {
  const middle = [...times].sort((a, b) => a - b)[times.length >> 1]!;
  const against = budget_ms ? `  budget ${budget_ms} ms, ratio ${(middle / budget_ms).toFixed(2)}` : '';
  console.log(`${name.padEnd(48)} ${middle.toFixed(1).padStart(8)} ms${against}`);
}

export interface Timed<T> {
  readonly ms: number;
  readonly result: T;
}

/** Shortest of some calls after a warm-up: other work on the machine can only lengthen a call. */
export function shortest<T>(runs: number, work: () => T): Timed<T> {
  let result = work();
  let ms = Infinity;
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    result = work();
    ms = Math.min(ms, performance.now() - start);
  }
  return { ms, result };
}

/** Prints two times and how many times faster the first is. */
export function compare(name: string, ours: Timed<unknown>, other: string, theirs: Timed<unknown>): void {
  const ratio = (theirs.ms / ours.ms).toFixed(1);
  console.log(
    `${name.padEnd(48)} ${ours.ms.toFixed(1).padStart(8)} ms  ${other} ${theirs.ms.toFixed(1)} ms, ${ratio} times as long`,
  );
}
