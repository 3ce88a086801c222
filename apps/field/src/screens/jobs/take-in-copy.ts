import { keepPhotographs, readCopy } from "../../hand-over/copy.ts";
import { Session } from "../../record/session.ts";
import { keepJob } from "../../record/store.ts";
import { labelOf } from "../../shell/job-label.ts";

/** Takes in the copy of a job from another device, or joins it to the same job here; undefined where it is no copy. */
export async function takeInCopy(bytes: Uint8Array): Promise<string | undefined> {
  const copy = await readCopy(bytes).catch(() => undefined);
  if (copy === undefined) return undefined;
  await keepPhotographs(copy);
  const session = await Session.open(copy.job);
  try {
    await session.join(copy.entries);
    await keepJob(labelOf(copy.job, session.record, new Date().toISOString()));
  } finally {
    session.close();
  }
  return copy.job;
}
