import { ofBonds } from "../of-things.ts";
import { stated } from "../property.ts";

/** Whether the part that is bonded is an extraneous-conductive-part. */
export const bondExtraneous = stated("bond-extraneous", "extraneous-conductive-part", (spoken) =>
  ofBonds(spoken, ({ extraneous }) => extraneous),
);
