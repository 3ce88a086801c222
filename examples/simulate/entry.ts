import type { TrueCable, TrueCircuit } from "./installation.ts";

/**
 * A circuit as the file has it. `readings` are those of its tests; `testRcd` tests an RCD of its own, which an inspector
 * does after the loop.
 */
export function entryOf(circuit: TrueCircuit, readings: object, testRcd: () => object) {
  const { device } = circuit;
  return {
    id: circuit.id,
    designation: circuit.id.replace(/^\D+/, ""),
    description: circuit.name,
    shape: circuit.shape,
    load: circuit.load,
    phases: circuit.phases ?? 1,
    ...(circuit.points === undefined ? {} : { points: circuit.points }),
    socketOutlets: circuit.load === "socket-outlets",
    device: {
      standard: device.standard,
      ...(device.type === undefined ? {} : { type: device.type }),
      rated: `${device.rated} A`,
      ...(device.kiloamperes === undefined ? {} : { breakingCapacity: `${device.kiloamperes} kA` }),
      ...(device.energyClass === undefined ? {} : { energyClass: device.energyClass }),
    },
    rcd: rcdOf(circuit.rcd, testRcd),
    cable: cableOf(circuit.cable),
    ...(circuit.designCurrent === undefined ? {} : { designCurrent: `${circuit.designCurrent} A` }),
    readings,
    ...(circuit.note === undefined ? {} : { note: circuit.note }),
  };
}

function rcdOf(rcd: string, testRcd: () => object) {
  if (rcd === "none") return "none";
  if (rcd !== "own") return { board: rcd };
  return {
    own: {
      standard: "BS EN 61009",
      type: "A",
      delay: "general",
      residual: "30 mA",
      readings: { atRated: testRcd(), button: "trips" },
    },
  };
}

function cableOf({ kind, line, cpc, methods, length, lengthKnown = true }: TrueCable) {
  // Who did not see the route paces the rooms: from a seventh short to a seventh over.
  const paced = { from: `${Math.max(1, Math.floor(length * 0.85))} m`, to: `${Math.ceil(length * 1.15)} m` };
  return {
    kind,
    insulation: kind === "armoured" ? "90C-thermosetting" : "70C-thermoplastic",
    material: "copper",
    line: `${line} mm²`,
    cpc: `${cpc} mm²`,
    cpcArrangement: kind === "singles" ? "separate" : "in-cable",
    methods: [...methods],
    length: lengthKnown ? `${length} m` : paced,
  };
}
