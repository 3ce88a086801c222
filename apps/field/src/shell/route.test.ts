import { expect, test } from "vitest";
import { routeOf } from "./route.ts";

test.each<readonly [string, readonly string[] | undefined]>([
  ["", []],
  ["#", []],
  ["#/", []],
  ["#/job/demonstration/observations/o3", ["job", "demonstration", "observations", "o3"]],
  ["#/job/a%2Fb", ["job", "a/b"]],
  ["#/job/%E0%A4%A", undefined],
  ["#/%", undefined],
])("the steps of %s", (hash, steps) => {
  expect(routeOf(hash)).toEqual(steps);
});
