import type { Unit } from "@good-grounds/core";
import * as z from "zod";

/** A rule of our own that a text is held to. */
export type OwnRule =
  | { readonly rule: "written"; readonly unit: Unit; readonly exact: boolean }
  | { readonly rule: "accuracy" };

/**
 * The rules of our own by the schema that has them. A schema keeps them as functions, and no code can be made of a function:
 * whoever adds such a rule says here which it is, or `acceptor/written-out.ts` refuses the schema.
 */
export const OWN_RULES = z.registry<OwnRule>();
