import { ofBonds } from "../of-things.ts";
import { stated } from "../property.ts";

/** Whether the bonding conductor is connected. */
export const bondConnected = stated("bond-connected", "bonding conductor connected", (spoken) =>
  ofBonds(spoken, ({ connected }) => connected),
);
