import type { Value } from "../record/entry.ts";
import type { Data } from "./protocol.ts";

/** For tests: a job of one board with one circuit that has these readings. */
export const oneCircuit = (readings: Value): Data => ({
  brief: { use: "dwelling" },
  supply: { earthing: "TN-C-S", nominalVoltage: "230 V", bonding: [] },
  boards: [
    {
      id: "cu",
      name: "CU",
      fedFrom: "supply",
      circuits: [
        {
          id: "c1",
          designation: "1",
          description: "sockets",
          device: { standard: "BS EN 60898", type: "B", rated: "32 A" },
          rcd: "none",
          readings,
        },
      ],
    },
  ],
});
