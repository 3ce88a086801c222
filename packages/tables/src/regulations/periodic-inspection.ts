import { regulationsOf } from "./regulation.ts";

/** Chapter 65 and the model forms. */
export const PERIODIC_INSPECTION = regulationsOf("periodic-inspection", [
  ["651.1", "memory", "Inspect and test periodically where required; use earlier records where there are any."],
  [
    "651.2",
    "memory",
    "Look closely, opened up as far as needed, and test, to show that people and livestock are safe, fire is prevented, nothing has worn or broken into danger, and defects are found.",
  ],
  ["651.3", "memory", "Take care that the inspection itself endangers nobody and damages nothing."],
  [
    "651.4",
    "published",
    "Record the extent and the results, with damage, deterioration, defects and dangerous conditions.",
  ],
  ["651.5", "memory", "Only competent persons do it."],
  ["652.1", "memory", "How often depends on kind and use, upkeep, surroundings and what the last report found."],
  ["652.2", "memory", "Good management with constant monitoring may stand in for fixed intervals."],
  ["653.1", "published", "A report when the work is done; in amendment 4 its producer heeds the notes for producers."],
  [
    "653.2",
    "published",
    "What was covered and what was not, with schedules; in amendment 4 guidance for recipients too.",
  ],
  ["653.3", "memory", "Dangerous conditions and defects are recorded."],
  ["653.4", "published", "The interval to the next inspection is recommended, with the reason for it."],
  ["653.5", "memory", "Skilled persons compile the report and sign or otherwise authenticate it."],
  [
    "Appendix 6",
    "published",
    "Model forms; informative. Condition reports for homes and the like up to 100 A, and for others.",
  ],
]);
