import { inspectionJsonSchema } from "@good-grounds/inspection/json-schema";
import { EXIT, type ExitCode, type Host, Stop } from "../host.ts";

/** `goodgrounds schema`: the JSON Schema of the inspection file. */
export function schemaCommand(rest: readonly string[], host: Host): ExitCode {
  if (rest.length > 0) throw new Stop(EXIT.input, "schema: takes no arguments.");
  host.stdout.write(`${JSON.stringify(inspectionJsonSchema(), null, 2)}\n`);
  return EXIT.done;
}
