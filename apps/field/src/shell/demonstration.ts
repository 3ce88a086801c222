import { placesOf } from "../record/document.ts";
import type { Value } from "../record/entry.ts";
import { discard, Session } from "../record/session.ts";
import { keepJob, keepSetting } from "../record/store.ts";
import { labelOf } from "./job-label.ts";

/** The demonstration's job, and the setting that says whether it was made or thrown away. */
export const DEMONSTRATION = "demonstration";

/** Writes the invented house as a job of its own. */
export async function makeDemonstration(): Promise<void> {
  const answer = await fetch("demonstration.json");
  if (!answer.ok) throw new Error(`demonstration.json: ${answer.status}`);
  const data = (await answer.json()) as { readonly [name: string]: Value };
  await discard(DEMONSTRATION);
  const session = await Session.open(DEMONSTRATION);
  try {
    await session.write(...placesOf(data));
    await keepJob(labelOf(DEMONSTRATION, session.record, new Date().toISOString()));
    await keepSetting(DEMONSTRATION, "made");
  } finally {
    session.close();
  }
}
