import { matter } from "../../terms/term.ts";

/** How conductors are joined. */
export const JOINT_METHODS = ["screwed", "sprung", "crimped", "soldered", "plugged", "twisted"] as const;
export type JointMethod = (typeof JOINT_METHODS)[number];

/** State of a joint or a connection, best first. `browned`: marked by heat. */
export const CONNECTION_STATES = ["sound", "corroded", "loose", "browned", "broken"] as const;
export type ConnectionState = (typeof CONNECTION_STATES)[number];

/** What is asked about a joint. */
export const JOINT_MATTER = Object.freeze({
  method: matter("joint-method", "how the conductors are joined"),
  enclosed: matter("joint-enclosed", "the joint is enclosed"),
  accessible: matter("joint-accessible", "the joint is accessible"),
  maintenanceFree: matter("joint-maintenance-free", "made and marked to need no access"),
  state: matter("connection-state", "state of the connection"),
});
