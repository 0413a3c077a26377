/** Milliseconds of processor time that this process has used: other programs on the machine do not count. */
export function cpuMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** What a call gives, and the processor time it took. */
export function timed<T>(call: () => T): { readonly ms: number; readonly result: T } {
  const from = cpuMs();
  const result = call();
  return { ms: cpuMs() - from, result };
}
