import type { Draws } from "../draws.ts";
import { partsOf } from "../house/draw-circuit.ts";
import type { Circuit, House, ResidualDevice } from "../house/house.ts";
import { longestByDrop, permittedLoop } from "../house/limits.ts";
import { greatestLoop } from "../site/loop.ts";
import { isRadial, oneOf, through, withCircuit } from "./edit.ts";
import type { Fault, Planted } from "./fault.ts";

type Change = (rcd: ResidualDevice) => ResidualDevice;

/** One residual device changed, and where it may be told of. */
function withResidual(house: House, draws: Draws, change: Change): Planted | null {
  const own = house.circuits.filter(({ rcd }) => rcd !== "none" && "own" in rcd);
  const boards = house.boards.filter(({ rcds }) => rcds.length > 0);
  const chosen = draws.whole("which", 0, own.length + boards.length - 1);
  const circuit = own[chosen];
  if (circuit !== undefined)
    return { house: withCircuit(house, circuit.id, (one) => ownChanged(one, change)), at: [circuit.id] };
  const board = boards[chosen - own.length];
  if (board === undefined) return null;
  const rcd = draws.one("rcd", board.rcds);
  const changed = { ...board, rcds: board.rcds.map((one) => (one === rcd ? change(one) : one)) };
  const behind = house.circuits.filter((one) => one.board === board.id).map(({ id }) => id);
  return {
    house: { ...house, boards: house.boards.map((one) => (one === board ? changed : one)) },
    at: [board.id, ...behind],
  };
}

function ownChanged(circuit: Circuit, change: Change): Circuit {
  const { rcd } = circuit;
  return rcd === "none" || !("own" in rcd) ? circuit : { ...circuit, rcd: { own: change(rcd.own) } };
}

/** Another circuit in the place of one, its cable laid anew. */
function replaced(house: House, circuit: Circuit, draws: Draws): House {
  const parts = house.parts.filter(({ of }) => of !== circuit.id && !of.startsWith(`${circuit.id},`));
  return { ...withCircuit(house, circuit.id, () => circuit), parts: [...parts, ...partsOf(circuit, draws)] };
}

/** A radial on which more can be plugged or hung; what is fixed to a cable does not overload it. */
const overloads = (circuit: Circuit) => isRadial(circuit) && (circuit.sockets || circuit.load === "lighting");

/** Faults of devices and of what is chosen by them. */
export const IN_DEVICES: readonly Fault[] = [
  {
    id: "rcd-dead",
    says: "RCD that does not trip",
    named: /rcd/,
    plant: (house, draws) => withResidual(house, draws, (rcd) => ({ ...rcd, milliseconds: Number.POSITIVE_INFINITY })),
  },
  {
    id: "rcd-slow",
    says: "RCD slower than its standard permits",
    unit: "ms",
    named: /rcd|device-out-of-limits/,
    plant(house, draws) {
      const size = draws.acrossDecades("size", 1.01, 4);
      const planted = withResidual(house, draws, (rcd) => ({
        ...rcd,
        milliseconds: size * (rcd.delay === "S" ? 500 : 300),
      }));
      return planted && { ...planted, size: size * 300 };
    },
  },
  {
    id: "rcd-type",
    says: "RCD of type AC for a charging point",
    named: /rcd/,
    plant(house, draws) {
      const circuit = oneOf(house, draws, ({ load }) => load === "vehicle-charging");
      if (circuit === null) return null;
      const changed = withCircuit(house, circuit.id, (one) =>
        ownChanged(one, (rcd) => ({ ...rcd, standard: "BS EN 61008", type: "AC" })),
      );
      return { house: changed, at: [circuit.id] };
    },
  },
  {
    id: "device-too-large",
    says: "device rated above what the cable carries",
    named: /device/,
    plant(house, draws) {
      const circuit = oneOf(
        house,
        draws,
        (one) => overloads(one) && one.cable.line <= 2.5 && one.device.standard.startsWith("BS EN"),
      );
      if (circuit === null) return null;
      const amperes = circuit.cable.line === 2.5 ? draws.one("amperes", [32, 40]) : draws.one("amperes", [25, 32]);
      const changed = withCircuit(house, circuit.id, (one) => ({
        ...one,
        device: { ...one.device, type: "B", amperes },
      }));
      return { house: changed, at: [circuit.id] };
    },
  },
  {
    id: "device-curve",
    says: "breaker of a type that the loop is too high for",
    unit: "times",
    named: /device/,
    plant(house, draws) {
      if (house.earthing === "TT") return null;
      const type = draws.one("type", ["C", "D"]);
      const changed = (one: Circuit): Circuit => ({ ...one, device: { ...one.device, type } });
      const over = (one: Circuit) => greatestLoop(house, one, () => 70) / permittedLoop(changed(one));
      const circuit = oneOf(house, draws, (one) => one.device.standard === "BS EN 60898" && over(one) > 1);
      if (circuit === null) return null;
      // With an RCD ahead the circuit is still disconnected in time: without one it is not.
      return {
        house: withCircuit(house, circuit.id, (one) => ({ ...changed(one), rcd: "none" })),
        at: [circuit.id],
        size: over(circuit),
      };
    },
  },
  {
    id: "cpc-energy",
    says: "protective conductor too small for its semi-enclosed fuse",
    named: /device|size/,
    plant(house, draws) {
      const circuit = oneOf(
        house,
        draws,
        (one) => one.device.standard === "BS 3036" && one.device.amperes >= 30 && one.cable.arrangement === "in-cable",
      );
      if (circuit === null) return null;
      const cable = { ...circuit.cable, cpc: circuit.device.amperes === 45 ? 1.5 : 1 };
      return { house: replaced(house, { ...circuit, cable }, draws), at: [circuit.id] };
    },
  },
  {
    id: "too-long",
    says: "cable too long for what it carries",
    unit: "times",
    named: /length/,
    plant(house, draws) {
      const circuit = oneOf(
        house,
        draws,
        (one) => isRadial(one) && one.load !== "lighting" && one.cable.kind === "flat-twin-and-cpc",
      );
      if (circuit === null) return null;
      const size = draws.between("size", 1.02, 1.8);
      return {
        house: replaced(house, { ...circuit, metres: longestByDrop(circuit) * size }, draws),
        at: through(house, circuit),
        size,
      };
    },
  },
];
