import { type Fact, fact, factNotKnown, type Matter, type Path } from "@good-grounds/core";

/** Whether all members of a list were recorded: not known where nobody did, or where some could not be read. */
export function listed(about: Matter, isWhole: boolean, path: Path): Fact<boolean> {
  return isWhole ? fact(about, true, path) : factNotKnown(about, path);
}
