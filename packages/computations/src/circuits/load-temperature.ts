import { assumed, type Evidence, type Reckoner, TERM } from "@good-grounds/core";

const AT_30 = assumed(TERM.ambientTemperature, 30, "ambient temperature the capacity tables hold for");

/** Conductor temperature in °C under a steady load: the rise goes with the square of the current. */
export function temperatureUnderLoad(
  given: {
    readonly designCurrent: Evidence<"ampere">;
    readonly tabulated: Evidence<"ampere">;
    readonly ambient: Evidence<"celsius">;
    readonly operating: Evidence<"celsius">;
  },
  reckon: Reckoner,
): Evidence<"celsius"> {
  const ratio = reckon.quotient(TERM.loadRatio, given.designCurrent, given.tabulated);
  const squared = reckon.product(TERM.loadRatio, ratio, ratio);
  const span = reckon.difference(TERM.temperatureSpan, given.operating, AT_30);
  const rise = reckon.product(TERM.temperatureSpan, span, squared);
  return reckon.sum(TERM.loadTemperature, given.ambient, rise);
}
