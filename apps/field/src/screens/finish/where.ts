import { ITEM_GROUPS } from "@good-grounds/inspection/items";
import { membersOf } from "../../record/document.ts";
import type { Record as JobRecord } from "../../record/record.ts";

/** Screens on which what stands at a place is entered, by the first step of the place. */
const SCREEN: Readonly<Record<string, string>> = {
  brief: "brief",
  title: "brief",
  edition: "brief",
  inspectedOn: "brief",
  people: "people",
  instruments: "people",
  visits: "people",
  extent: "extent",
  limitations: "extent",
  precautions: "cautions",
  earthingOff: "cautions",
  supply: "supply",
  photographs: "observations",
};

/** The steps of the address, below the job, at which a trouble is put right; undefined where it is this screen or none. */
export function whereOf(record: JobRecord, path: string): readonly string[] | undefined {
  const [head = "", name = "", list = "", member = "", further = ""] = path.split("/");
  if (head === "boards") {
    if (name === "") return ["installation"];
    if (list === "readings") return ["readings", name];
    if (list !== "circuits" || member === "") return ["installation", name];
    return [further === "readings" ? "readings" : "installation", name, member];
  }
  if (head === "supply") return name === "readings" ? ["supply", "readings"] : ["supply"];
  if (head === "things") return thingAddress(name, list, member);
  if (head === "observations" && list === "brings" && further !== "")
    return thingAddress(member, further, path.split("/")[5]);
  if (head === "observations") return name === "" ? ["observations"] : ["observations", name];
  if (head === "inspected") {
    const item = record.value(`inspected/${membersOf(record, "inspected")[Number(name)] ?? name}/item`);
    const group = ITEM_GROUPS.find(({ items }) => items.some(({ id }) => id === item));
    return group === undefined ? ["inspected"] : ["inspected", group.id];
  }
  const screen = SCREEN[head];
  return screen === undefined ? undefined : [screen];
}

/** The screen of one thing, or of its readings; of all where none is named. */
function thingAddress(kind: string, name: string, member: string | undefined): readonly string[] {
  if (name === "") return ["things"];
  return member === "resistance" ? ["things", kind, name, "readings"] : ["things", kind, name];
}
