import { isKnownFact, type Misfit } from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { timeMisfit } from "./residual-time.ts";

/** RCD times that do not go with the device written down, and devices that do not go with their circuit. */
export function residualMisfits({ boards, circuits }: Installation): readonly Misfit[] {
  return [
    ...boards.flatMap((board) =>
      board.rcds.flatMap(
        (rcd) =>
          timeMisfit(
            rcd,
            board.rcds.filter((one) => one !== rcd),
            `${board.name}, RCD${rcd.id === undefined ? "" : ` ${rcd.id}`}`,
          ) ?? [],
      ),
    ),
    ...circuits.flatMap((circuit) => {
      const [own] = circuit.residual.devices;
      const isOwn = own !== undefined && own.path[2] === "circuits";
      return [
        isOwn ? timeMisfit(own, circuit.residual.devices.slice(1), `Circuit ${circuit.designation}, RCD`) : undefined,
        deviceMisfit(circuit),
      ].flatMap((one) => one ?? []);
    }),
  ];
}

/** Odds of what follows from marks alone: somebody wrote one of the two wrongly. */
const CERTAIN = 3;

/** A device that has an RCD in it by its standard beside a circuit written down without one, and the other way round. */
function deviceMisfit({ device, residual, path, designation }: Circuit): Misfit | undefined {
  const { standard } = device;
  if (!isKnownFact(standard)) return undefined;
  const [own] = residual.devices;
  const isOwn = own !== undefined && own.path[2] === "circuits";
  const combined = standard.word === "BS EN 61009";
  const without = combined && isKnownFact(residual.present) && !residual.present.word;
  const within = !combined && isOwn && isKnownFact(own.standard) && own.standard.word === "BS EN 61009";
  if (!without && !within) return undefined;
  const words = without
    ? [
        "the circuit has an RCD: its device is a breaker with one in it",
        "the device is a breaker without an RCD and its standard is wrong",
      ]
    : [
        "the RCD is a device apart from the breaker, or serves several circuits",
        "the device is a breaker with an RCD in it and its standard is wrong",
      ];
  return {
    kind: "residual-device",
    path,
    title: `Circuit ${designation}: device and RCD do not go together`,
    odds: CERTAIN,
    clear: true,
    readings: [],
    explanations: words.map((one, i) => ({
      id: i === 0 ? "rcd-written-wrongly" : "device-written-wrongly",
      words: one,
      share: 0.5,
      innocent: true,
      would: [],
    })),
    toldApart: false,
    next: {
      id: "look",
      words: "read the marks on the device and press its test button",
      expects: words.map((one, i) => ({
        explanation: i === 0 ? "rcd-written-wrongly" : "device-written-wrongly",
        words: one,
      })),
    },
    innocentCauses: ["a device changed since the schedule was begun"],
    formula: "BS EN 61009: overcurrent and residual current protection in one device",
    grounds: [standard, residual.present],
  };
}
