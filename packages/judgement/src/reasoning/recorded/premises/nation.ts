import { NATIONS } from "@good-grounds/core";
import { ofPremises } from "../of-things.ts";
import { worded } from "../property.ts";

/** The part of the United Kingdom, whose law holds. */
export const nation = worded("nation", "nation", NATIONS, (spoken) => ofPremises(spoken, ({ nation }) => nation));
