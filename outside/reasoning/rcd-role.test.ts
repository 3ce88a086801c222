import { describe, expect, test } from "vitest";
import { type House, rcd, reasonedIn } from "./rcd-house.ts";

const OWN: House = { rcds: { circuit: rcd("30 mA", "works") } };

function role(house: House, facts: Record<string, unknown> = {}, place: object = { board: "b", circuit: "c" }) {
  return reasonedIn({ ...house, observation: { topic: "rcd-does-not-trip", facts, ...place } });
}
const recorded = (one: ReturnType<typeof role>) => one.recorded.find(({ fact }) => fact === "rcd-role")?.value;

describe("what the RCD of a circuit does", () => {
  test("on TT, the only one and a loop too high for the breaker: it disconnects faults", () => {
    expect(recorded(role(OWN))).toBe("fault-protection");
  });
  test("on TT with the loop not measured: the same", () => {
    expect(recorded(role({ ...OWN, circuit: { readings: {} } }))).toBe("fault-protection");
  });
  test("dead: it is that nonetheless", () => {
    expect(recorded(role({ rcds: { circuit: rcd("30 mA", "dead") } }))).toBe("fault-protection");
  });
  test("stated otherwise: to settle", () => {
    const one = role(OWN, { "rcd-role": "additional" });
    expect(one.against.map(({ fact, value, stated }) => [fact, value, stated])).toEqual([
      ["rcd-role", "fault-protection", "additional"],
    ]);
  });
  test("with another one ahead it is open which of them disconnects", () => {
    expect(recorded(role({ rcds: { ...OWN.rcds, feeder: rcd("100 mA", "works") } }))).toBeUndefined();
  });
  test("on TN, where the breaker disconnects: it may do anything but that", () => {
    const one = role({ ...OWN, earthing: "TN-S" });
    expect(recorded(one)).toBe("above-30 | additional | wet-or-outdoors");
    const said = role({ ...OWN, earthing: "TN-S" }, { "rcd-role": "fault-protection" });
    expect(said.against.map(({ fact }) => fact)).toEqual(["rcd-role"]);
  });
  test("on TN with a loop too high for the breaker: it disconnects faults", () => {
    const high = { ...OWN, earthing: "TN-S", circuit: { readings: { zs: { shown: "4.1 Ω" } } } } as const;
    expect(recorded(role(high))).toBe("fault-protection");
  });
  test("on TN with the loop not measured: open", () => {
    expect(recorded(role({ ...OWN, earthing: "TN-S", circuit: { readings: {} } }))).toBeUndefined();
  });
  test("system not recorded: open", () => {
    const unread = { ...OWN, circuit: { readings: {} }, supply: { earthing: undefined } };
    expect(recorded(role(unread))).toBeUndefined();
  });
  test("of the board, the circuits behind it decide", () => {
    expect(recorded(role({ rcds: { board: rcd("100 mA", "works") } }, {}, { board: "b" }))).toBe("fault-protection");
  });
});
