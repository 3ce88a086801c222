import type { ChoiceWords } from "@good-grounds/report";
import type { Topics } from "@good-grounds/topics";

/** Words of choices from the topics they were made with. */
export function choiceWords(topics: Topics): ChoiceWords {
  return {
    topic: (topic) => topics.byId(topic)?.title,
    fact: (topic, fact) => topics.byId(topic)?.facts[fact]?.asks,
    value: (topic, name, value) => {
      const fact = topics.byId(topic)?.facts[name];
      if (fact?.kind === "yes-no") return value === true || value === "yes" ? fact.yes : fact.no;
      if (fact?.kind !== "choice" || typeof value !== "string") return undefined;
      return value
        .split(" | ")
        .map((one) => fact.values[one] ?? one)
        .join(", or ");
    },
    point: (topic, point) => topics.byId(topic)?.contested[point]?.question,
    position: (topic, point, position) => topics.byId(topic)?.contested[point]?.positions[position]?.words,
  };
}
