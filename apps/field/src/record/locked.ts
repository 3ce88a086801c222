/** How long a lock is waited for, in milliseconds: a tab that hangs with it must not stop all others for ever. */
const LIMIT = 20_000;

/**
 * Does something with a job while no other tab throws it away or puts its stores in step: "shared" for adding to it,
 * "exclusive" for those two. Where the browser has no locks, or one is held for ever, it is done without.
 */
export async function locked<T>(job: string, mode: "shared" | "exclusive", work: () => Promise<T>): Promise<T> {
  const locks = navigator.locks as LockManager | undefined;
  if (locks === undefined) return work();
  const limit = new AbortController();
  const timer = setTimeout(() => limit.abort(), LIMIT);
  let begun = false;
  try {
    return await locks.request(`job ${job}`, { mode, signal: limit.signal }, () => {
      begun = true;
      clearTimeout(timer);
      return work();
    });
  } catch (error) {
    if (begun) throw error;
    return work();
  } finally {
    clearTimeout(timer);
  }
}
