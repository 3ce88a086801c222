import { ownTopic, ownTopics } from "./gathered.ts";
import { findTopics as foundIn } from "./search/find-topics.ts";
import type { Topic } from "./topic.ts";

/** A position that a firm holds in all its inspections. */
export interface StandingView {
  readonly point: string;
  /** The topic it holds in; every topic that has the point where it is left out. */
  readonly topic?: string;
  readonly position: string;
  /** The day from which it is held, YYYY-MM-DD. */
  readonly since: string;
  readonly by: string;
  readonly because: string;
}

/** A firm's own folder of topics and standing views, as results name it. */
export interface FolderLabel {
  readonly name: string;
  readonly answersFor: string;
  /** SHA-256 over the names and bytes of its texts, in hexadecimal. */
  readonly hash: string;
}

/** The knowledge that is reasoned with. */
export interface Topics {
  readonly all: readonly Topic[];
  /** The topic with this id; undefined where there is none. */
  byId(id: string): Topic | undefined;
  /** Topics that people mean by these words, the best first. */
  find(words: string): readonly Topic[];
  /** The firm's standing position on each contested point of a topic on which it has one. */
  positionsOn(topic: Topic): Readonly<Record<string, string>>;
  readonly views: readonly StandingView[];
  /** None where there is nothing but the topics of this package. */
  readonly folder?: FolderLabel;
}

/** Topics together with a firm's standing views; a view of one topic goes before one of all. */
export function topicsOf(
  all: readonly Topic[],
  { views = [], folder }: { readonly views?: readonly StandingView[]; readonly folder?: FolderLabel } = {},
): Topics {
  const byId = new Map(all.map((one) => [one.id, one]));
  const widestFirst = [...views.filter(({ topic }) => topic === undefined), ...views.filter((one) => "topic" in one)];
  return {
    all,
    byId: (id) => byId.get(id),
    find: (words) => foundIn(words, all),
    positionsOn: ({ id, contested }) =>
      Object.fromEntries(
        widestFirst
          .filter(({ topic = id, point }) => topic === id && Object.hasOwn(contested, point))
          .map(({ point, position }) => [point, position]),
      ),
    views,
    ...(folder === undefined ? {} : { folder }),
  };
}

/** The topics of this package, without any standing views. They are read when asked for, and singly where one is named. */
export const OWN_TOPICS: Topics = {
  get all() {
    return ownTopics();
  },
  byId: ownTopic,
  find: (words) => foundIn(words, ownTopics()),
  positionsOn: () => ({}),
  views: [],
};

/** The topic of this package with this id; undefined where there is none. */
export function topicById(id: string): Topic | undefined {
  return OWN_TOPICS.byId(id);
}

/** Topics of this package that people mean by these words, the best first. */
export function findTopics(words: string): readonly Topic[] {
  return OWN_TOPICS.find(words);
}
