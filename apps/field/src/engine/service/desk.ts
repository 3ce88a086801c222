import type { Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";

/** A job as it was weighed. */
export interface Weighed {
  readonly installation: Installation;
  readonly weighing: Weighing;
}

/** What the engine has before it between one request and the next. */
export interface Desk {
  /** What was weighed last: requests about findings and drawings are about this. */
  weighed: Weighed | undefined;
  /** Places as they were answered last, as text to tell what is different. */
  readonly answered: Map<string, string>;
}
