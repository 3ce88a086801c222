import { ofThings } from "../of-things.ts";
import { stated } from "../property.ts";

/** Whether its lock works. */
export const lockWorks = stated("lock-works", "the lock turns and locks", (spoken) =>
  ofThings(spoken, "enclosures", (state) => state.lockWorks),
);
