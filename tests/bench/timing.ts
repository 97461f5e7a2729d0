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
