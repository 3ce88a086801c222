import { type Parsed, parseInspection } from "@good-grounds/inspection";
import { topicIssues } from "@good-grounds/judgement";
import { OWN_TOPICS, type Topics } from "@good-grounds/topics";

/** Reads an inspection file and checks its observations against the topics they name; all problems at once. */
export function readInspection(text: string, topics: Topics = OWN_TOPICS): Parsed {
  const parsed = parseInspection(text);
  if (!parsed.ok) return parsed;
  const issues = topicIssues(parsed.file, topics);
  return issues.length === 0 ? parsed : { ok: false, issues };
}
