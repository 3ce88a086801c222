import { parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { reasonObservations, weigh } from "@good-grounds/judgement";
import { changed } from "../reports/example.ts";

/** The reasoning of one observation of its own in the invented terraced house. */
export function reasonedInExample(observation: Record<string, unknown>) {
  const text = changed((file) => {
    Object.assign(file, {
      observations: [{ id: "x", place: "somewhere", what: "something", ...observation }],
      inspected: [],
    });
  });
  const parsed = parseInspection(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const installation = resolveInstallation(parsed.file);
  const [one] = reasonObservations(installation, weigh(installation));
  if (one === undefined) throw new Error("not reasoned about");
  return one;
}
