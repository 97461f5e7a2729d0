/** Held by the one tab that keeps a project. */
export interface TabLock {
  readonly release: () => void;
  /** Resolves when another tab has stolen it. */
  readonly lost: Promise<void>;
}

/** A page that is just being left lets go within this time, ms. */
const WAIT_MS = 500;

const nameOf = (project: string): string => `upstand-project-${project}`;

/** Not there on pages that came without encryption. */
const lockManager = (): LockManager | undefined => globalThis.navigator?.locks;

/**
 * Takes the lock of a project; null where another tab has it, unless it is to be stolen. Where the browser has no locks everybody gets
 * one: what two tabs write is kept apart by the store itself (see `Journal.holder`).
 */
export async function takeLock(project: string, isStolen = false): Promise<TabLock | null> {
  const locks = lockManager();
  if (!locks) return { release: () => {}, lost: new Promise(() => {}) };
  if (isStolen) return request(locks, project, { steal: true });
  const atOnce = await request(locks, project, { ifAvailable: true });
  return atOnce ?? request(locks, project, { signal: AbortSignal.timeout(WAIT_MS) });
}

function request(locks: LockManager, project: string, options: LockOptions): Promise<TabLock | null> {
  return new Promise((resolve) => {
    let isReleased = false;
    let lose: (() => void) | null = null;
    const hold = (lock: Lock | null) => {
      if (!lock) return resolve(null);
      return new Promise<void>((letGo) => {
        const lost = new Promise<void>((resolveLost) => {
          lose = resolveLost;
        });
        const release = () => {
          isReleased = true;
          letGo();
        };
        resolve({ release, lost });
      });
    };
    locks.request(nameOf(project), options, hold).catch(() => {
      if (!lose) resolve(null);
      else if (!isReleased) lose();
    });
  });
}

/** Whether a tab, this or another, has the project open. */
export async function isLocked(project: string): Promise<boolean> {
  const { held = [] } = (await lockManager()?.query()) ?? {};
  return held.some(({ name }) => name === nameOf(project));
}
