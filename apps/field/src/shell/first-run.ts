import { jobs, setting } from "../record/store.ts";
import { DEMONSTRATION, makeDemonstration } from "./demonstration.ts";
import { goTo } from "./route.ts";

/** On the very first run the demonstration is opened. */
export async function firstRun(): Promise<void> {
  if ((await setting(DEMONSTRATION)) !== undefined || (await jobs()).length > 0) return;
  await makeDemonstration();
  if (location.hash === "") goTo("job", DEMONSTRATION);
}
