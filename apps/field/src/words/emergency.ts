import { networkEmergencyNumber } from "@good-grounds/core";

/** Whom to call about danger on the supply side, for the nation as recorded; "" where it is not. */
export function networkLine(nation: string): string {
  const number = networkEmergencyNumber(nation);
  return number === undefined
    ? "the distributor's own emergency number, as shown at the meter or on the bill"
    : `the distributor's emergency line, ${number}`;
}

/** The same for whoever lives or works there: "call …". */
export function networkToCall(nation: string): string {
  return networkEmergencyNumber(nation) ?? "the number at the meter or on the bill";
}
