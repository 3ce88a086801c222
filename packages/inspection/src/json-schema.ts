import * as z from "zod";
import { inspectionFile } from "./schema/file.ts";

/** The JSON Schema (draft 2020-12) of the inspection file, made from the schema that validates it. */
export function inspectionJsonSchema(): object {
  return z.toJSONSchema(inspectionFile, { io: "input", unrepresentable: "any" });
}
