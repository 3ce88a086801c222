import type { Page } from "playwright-core";

/** Pages below the screens of a job: one of each kind that the demonstration has. */
const BELOW: readonly (readonly string[])[] = [
  ["cautions", "covers"],
  ["cautions", "earthing"],
  ["cautions", "leave"],
  ["supply", "readings"],
  ["installation", "cu"],
  ["installation", "cu", "c1"],
  ["things", "surgeDevices", "surge-1"],
  ["inspected", "boards"],
  ["readings", "cu"],
  ["readings", "cu", "c1"],
  ["observations", "o4"],
];

/** Every screen of a job and a page of each kind below them, as steps of the address after the job. */
export async function jobScreens(visit: Page): Promise<readonly (readonly string[])[]> {
  const links = await visit
    .locator('main a[href^="#/job/demonstration/"]')
    .evaluateAll((all) => all.map((link) => link.getAttribute("href")?.split("/")[3] ?? ""));
  return [[], ...[...new Set(links)].map((id) => [id]), ...BELOW];
}
