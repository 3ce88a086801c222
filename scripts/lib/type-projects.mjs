import { posix } from "node:path";

/**
 * The projects of `all` (paths of tsconfig files) that were asked for, by their folder or their own path, in the order
 * of `all`; all of them where nothing was asked. `unknown` holds what names none of them.
 */
export function projectsAsked(all, asked) {
  if (asked.length === 0) return { projects: all, unknown: [] };
  const named = asked.map((name) => ({ name, project: projectOf(all, name) }));
  return {
    projects: all.filter((project) => named.some((one) => one.project === project)),
    unknown: named.filter(({ project }) => project === undefined).map(({ name }) => name),
  };
}

function projectOf(all, name) {
  const path = posix.join(name.replaceAll("\\", "/"), ".").replace(/\/$/, "");
  return all.find((project) => project === path || project === `${path}/tsconfig.json`);
}
