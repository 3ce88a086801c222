/** What a store is given to answer, in milliseconds: far more than a slow disk needs, and not for ever. */
const LIMIT = 20_000;

/** The same promise, broken by an error of its own where it takes longer than any store should. */
export function within<T>(promise: Promise<T>, late: () => Error): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const limit = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(late()), LIMIT);
  });
  return Promise.race([promise, limit]).finally(() => clearTimeout(timer));
}
