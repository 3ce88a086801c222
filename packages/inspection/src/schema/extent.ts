import * as z from "zod";
import { day, id, line, paragraph } from "./common.ts";

/** What the inspection covers, and how much of it was opened up. */
export const extent = z.strictObject({
  covered: paragraph,
  notCovered: paragraph.optional(),
  agreedWith: line.optional(),
  agreedOn: day.optional(),
  sampling: z
    .array(
      z.strictObject({
        what: line,
        population: z.int().min(0).max(100_000),
        inspected: z.int().min(0).max(100_000),
        defective: z.int().min(0).max(100_000),
        how: line.optional(),
      }),
    )
    .max(100),
});

/** A limitation: agreed beforehand, or met on site (operational). */
export const limitation = z.strictObject({
  id,
  kind: z.enum(["agreed", "operational"]),
  what: line,
  why: paragraph,
  agreedWith: line.optional(),
});
