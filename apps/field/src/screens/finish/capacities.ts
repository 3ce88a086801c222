import { FINISH } from "../../words/finish.ts";

/** As what somebody signs. */
export type Capacity = "inspected-and-tested" | "authorised-for-issue";

export const CAPACITIES: Readonly<Record<Capacity, string>> = {
  "inspected-and-tested": FINISH.inspected,
  "authorised-for-issue": FINISH.authorised,
};
