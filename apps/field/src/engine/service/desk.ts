import type { Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { Topics } from "@good-grounds/topics";

/** A job as it was weighed. */
export interface Weighed {
  readonly installation: Installation;
  readonly weighing: Weighing;
}

/** What the engine has before it between one request and the next. */
export interface Desk {
  /** What was weighed last: requests about findings and drawings are about this. */
  weighed: Weighed | undefined;
  /** The topics with those of a firm's folder; undefined where there is none. Fails where there is one that cannot be used. */
  topics: Promise<Topics> | undefined;
  /** Places as they were answered last, as text to tell what is different. */
  readonly answered: Map<string, string>;
}
