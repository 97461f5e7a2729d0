interface Held {
  readonly steal: () => void;
}

type Callback = (lock: Lock | null) => unknown;

/** Exclusive locks as the Web Locks API has them (W3C Web Locks: ifAvailable, steal, signal), which Node has none of. */
class ExclusiveLocks {
  readonly held = new Map<string, Held>();
  readonly #waiting = new Map<string, (() => void)[]>();

  async request(name: string, options: LockOptions, callback: Callback): Promise<unknown> {
    if (options.ifAvailable && this.held.has(name)) return callback(null);
    if (options.steal) {
      this.held.get(name)?.steal();
      this.held.delete(name);
    }
    if (this.held.has(name)) await this.#turn(name, options.signal);
    const mine: Held = { steal: () => undefined };
    const stolen = new Promise<never>((_, reject) => {
      Object.assign(mine, { steal: () => reject(new DOMException('stolen', 'AbortError')) });
    });
    stolen.catch(() => undefined);
    this.held.set(name, mine);
    try {
      return await Promise.race([callback({ name, mode: 'exclusive' }), stolen]);
    } finally {
      if (this.held.get(name) === mine) {
        this.held.delete(name);
        this.#waiting.get(name)?.shift()?.();
      }
    }
  }

  async query(): Promise<LockManagerSnapshot> {
    return { held: [...this.held.keys()].map((name) => ({ name })) };
  }

  #turn(name: string, signal: AbortSignal | undefined): Promise<void> {
    return new Promise((resolve, reject) => {
      const waiting = this.#waiting.get(name) ?? [];
      this.#waiting.set(name, [...waiting, resolve]);
      signal?.addEventListener('abort', () => {
        this.#waiting.set(
          name,
          (this.#waiting.get(name) ?? []).filter((one) => one !== resolve),
        );
        reject(signal.reason);
      });
    });
  }
}

/** Gives all pages of this process locks; returns the names held at any time, and how to take them away again. */
export function withLocks(): { readonly held: () => readonly string[]; readonly remove: () => void } {
  const locks = new ExclusiveLocks();
  const before = Object.getOwnPropertyDescriptor(globalThis, 'navigator');
  Object.defineProperty(globalThis, 'navigator', { value: { locks }, configurable: true });
  return {
    held: () => [...locks.held.keys()],
    remove: () => {
      if (before) Object.defineProperty(globalThis, 'navigator', before);
      else Reflect.deleteProperty(globalThis, 'navigator');
    },
  };
}
