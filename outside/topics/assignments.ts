export { assignments, canBeAt, countOf, EXHAUSTIVE, holdsAt, severityAt } from "@good-grounds/topics/laws";
