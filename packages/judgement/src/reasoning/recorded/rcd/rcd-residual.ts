import { ofRcds } from "../of-things.ts";
import { quantity } from "../property.ts";

/** The rated residual operating current of the RCD, and its usual classes. */
export const rcdResidual = quantity(
  "rcd-residual",
  "rated residual operating current of the RCD",
  "ampere",
  (spoken) => ofRcds(spoken, ({ residual }) => residual),
  [
    { value: "up-to-30-ma", upTo: 0.03 },
    { value: "up-to-100-ma", upTo: 0.1 },
    { value: "up-to-300-ma", upTo: 0.3 },
    { value: "up-to-500-ma", upTo: 0.5 },
    { value: "over-500-ma", upTo: Number.POSITIVE_INFINITY },
  ],
);
