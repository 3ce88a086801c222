import { discardPhotograph } from "../../photographs/files.ts";
import { discard } from "../../record/session.ts";
import { entriesOf, jobs } from "../../record/store.ts";

/** Throws a job away with its entries and with those of its photographs that no other job of this device names. */
export async function discardWithPhotographs(job: string): Promise<void> {
  const own = await photographsOf(job);
  await discard(job);
  if (own.size === 0) return;
  const others = await Promise.all((await jobs()).map(({ id }) => photographsOf(id)));
  for (const sha256 of own) if (!others.some((named) => named.has(sha256))) await discardPhotograph(sha256);
}

/** Hashes of all photographs that any entry of a job ever named. */
async function photographsOf(job: string): Promise<ReadonlySet<string>> {
  return new Set(
    (await entriesOf(job)).flatMap(({ path, value }) =>
      /^photographs\/[^/]+\/sha256$/.test(path) && typeof value === "string" ? [value] : [],
    ),
  );
}
