import { CONNECTION_STATES, JOINT_MATTER, JOINT_METHODS } from "@good-grounds/core";
import { wordField, yesNoField } from "../make.ts";

/** Where conductors are joined. */
export const JOINT = Object.freeze({
  method: wordField(JOINT_MATTER.method, JOINT_METHODS, { label: "Joined by" }),
  enclosed: yesNoField(JOINT_MATTER.enclosed, { label: "Enclosed" }),
  accessible: yesNoField(JOINT_MATTER.accessible, { label: "Accessible" }),
  maintenanceFree: yesNoField(JOINT_MATTER.maintenanceFree, { label: "Marked as maintenance-free" }),
  state: wordField(JOINT_MATTER.state, CONNECTION_STATES, { label: "State" }, { browned: "browned by heat" }),
});
