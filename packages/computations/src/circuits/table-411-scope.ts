import { type Fact, fact, factNotKnown, isExact, isKnownFact } from "@good-grounds/core";
import type { Circuit, Installation } from "@good-grounds/inspection";
import { fallsUnderTable411 } from "@good-grounds/tables";
import { ASKED } from "../matters.ts";

/**
 * Whether a circuit is a final circuit within the scope of Table 41.1 (regulation 411.3.2.2). Where the rating alone
 * settles it, nothing more is asked; otherwise it depends on whether the circuit has socket-outlets.
 */
export function standsUnderTable411(circuit: Circuit, installation: Installation): Fact<boolean> {
  const { shape, device, load, socketOutlets, path } = circuit;
  if (isKnownFact(shape) && shape.word === "distribution") {
    return fact(ASKED.underTable411, false, shape.detail.path, "distribution circuit");
  }
  if (!isExact(device.rated)) return factNotKnown(ASKED.underTable411, [...path, "device", "rated"]);
  if (!isKnownFact(shape)) return factNotKnown(ASKED.underTable411, [...path, "shape"]);
  const { edition } = installation;
  if (edition === undefined) return factNotKnown(ASKED.edition, ["edition"]);
  const ratedCurrent = device.rated.value;
  const withSockets = fallsUnderTable411(edition, { ratedCurrent, socketOutlets: true });
  const withoutSockets = fallsUnderTable411(edition, { ratedCurrent, socketOutlets: false });
  const rating = device.rated.kind === "seen" ? device.rated.detail.text : `${ratedCurrent} A`;
  if (withSockets === withoutSockets)
    return fact(ASKED.underTable411, withSockets, shape.detail.path, `final circuit, ${rating}`);
  if (isKnownFact(socketOutlets)) {
    const answer = socketOutlets.word ? withSockets : withoutSockets;
    return fact(
      ASKED.underTable411,
      answer,
      socketOutlets.detail.path,
      `final circuit, ${rating}, ${socketOutlets.word ? "with" : "without"} socket-outlets`,
    );
  }
  if (isKnownFact(load) && load.word === "socket-outlets") {
    return fact(ASKED.underTable411, withSockets, load.detail.path, `final circuit, ${rating}, with socket-outlets`);
  }
  return factNotKnown(ASKED.underTable411, socketOutlets.detail.path, "absent", "");
}
