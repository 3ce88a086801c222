import { ofCircuit } from "../of-things.ts";
import { stated } from "../property.ts";

/** Whether an RCD stands in the circuit spoken of, within its board. Whether it works is `rcd-state`. */
export const rcdPresent = stated("rcd-present", "RCD in the circuit", (spoken) =>
  ofCircuit(spoken, ({ residual }) => residual.present),
);
