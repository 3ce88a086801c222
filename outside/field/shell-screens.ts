const DEMO = ["job", "demonstration"];

/** Screens of the shell and of the start of the visit, each with the steps of its address. */
export const SHELL_SCREENS: readonly (readonly string[])[] = [
  ["jobs"],
  ["settings"],
  DEMO,
  [...DEMO, "brief"],
  [...DEMO, "people"],
  [...DEMO, "extent"],
  [...DEMO, "cautions"],
  [...DEMO, "cautions", "covers"],
  [...DEMO, "cautions", "earthing"],
  [...DEMO, "cautions", "leave"],
  [...DEMO, "inspected"],
  [...DEMO, "inspected", "boards"],
];
