import { NATIONS, PREMISES_USES, TENURES } from "@good-grounds/core";
import * as z from "zod";
import { LETTING } from "../fields/letting.ts";
import { day, id, line, moment, paragraph, stated } from "./common.ts";
import { shapeOf } from "./field-schema.ts";

/** What was ordered, for which premises, by whom and why. */
export const brief = z.strictObject({
  client: z.strictObject({ name: line, address: z.array(line).max(6).optional() }),
  premises: z.strictObject({
    address: z.array(line).min(1).max(6),
    uprn: z
      .string()
      .regex(/^\d{1,12}$/, "a UPRN of up to 12 digits")
      .optional(),
    description: line.optional(),
    occupier: line.optional(),
  }),
  use: stated(z.enum(PREMISES_USES)),
  tenure: stated(z.enum(TENURES)),
  nation: stated(z.enum(NATIONS)),
  purpose: line,
  /** What the law's duties run from; nothing is known of what is left out. */
  letting: z
    .strictObject({
      ...shapeOf(LETTING),
      starts: day.optional().meta({ description: "First day on which the tenant may live there" }),
      granted: day.optional().meta({ description: "Day on which the tenancy was granted" }),
      equipmentChecked: day
        .optional()
        .meta({ description: "Day on which the landlord's electrical equipment was last checked" }),
    })
    .optional(),
  ageOfInstallation: line.optional(),
  alterations: paragraph.optional(),
  records: z.array(z.strictObject({ kind: line, date: day.optional(), reference: line.optional() })).max(50),
  lastInspection: day.optional(),
});

export const visit = z.strictObject({
  date: day,
  arrived: moment.optional(),
  left: moment.optional(),
  note: paragraph.optional(),
});

export const person = z.strictObject({
  id,
  name: line,
  position: line.optional(),
  firm: line.optional(),
  address: z.array(line).max(6).optional(),
  registration: line.optional(),
});
