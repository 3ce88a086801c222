import { ORDERERS } from "@good-grounds/core";
import { wordField, yesNoField } from "./make.ts";
import { MATTER } from "./matters.ts";

/** What is known of a letting, and of who ordered the inspection. Duties of the law ask it; no judgement does. */
export const LETTING = Object.freeze({
  orderedBy: wordField(MATTER.orderedBy, ORDERERS, { label: "Ordered by" }),
  occupied: yesNoField(MATTER.occupied, { label: "A tenant lives there now" }),
  equipment: yesNoField(MATTER.landlordEquipment, {
    label: "Electrical equipment of the landlord",
    help: "appliances that go with the letting",
  }),
});
