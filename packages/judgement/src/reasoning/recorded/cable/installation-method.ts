import { isKnownFact, REFERENCE_METHODS } from "@good-grounds/core";
import type { SpokenOf } from "../../spoken-of/index.ts";
import type { RecordedProperty, Recording } from "../property.ts";

/** The reference methods that the route of the circuit's cable may have. "d" is in the ground. */
export const installationMethod: RecordedProperty = Object.freeze({
  id: "installation-method",
  name: "reference method of the cable",
  values: REFERENCE_METHODS.map((method) => method.toLowerCase()),
  read: ({ circuit }: SpokenOf): readonly Recording[] => {
    const [first, ...others] = circuit?.cable.methods ?? [];
    if (circuit === undefined || first === undefined) return [];
    const words = [first, ...others].flatMap((method) => (isKnownFact(method) ? [method.word.toLowerCase()] : []));
    return [{ of: circuit.path, leaf: first, values: words }];
  },
});
