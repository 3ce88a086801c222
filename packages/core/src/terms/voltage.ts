import { term } from "./term.ts";

/** Voltages, power and the factors that go with them. */
export const VOLTAGE = {
  nominalVoltage: term("nominal-voltage", "nominal voltage to earth", "U0", "volt"),
  measuredVoltage: term("measured-voltage", "measured supply voltage", "U", "volt"),
  neutralEarthVoltage: term("neutral-earth-voltage", "measured voltage between neutral and earth", "UN-PE", "volt"),
  leastVoltage: term("least-voltage", "lower limit of the supply voltage", "U,min", "volt"),
  greatestVoltage: term("greatest-voltage", "upper limit of the supply voltage", "U,max", "volt"),
  loopVoltage: term("loop-voltage", "voltage taken for the fault loop", "U0·Cmin", "volt"),
  touchVoltage: term("touch-voltage", "touch voltage during a fault", "RA·IΔn", "volt"),
  faultTouchVoltage: term("fault-touch-voltage", "voltage of exposed metal to earth during a fault", "Uf", "volt"),
  permittedTouchVoltage: term("permitted-touch-voltage", "permitted touch voltage", "UL", "volt"),
  voltageDrop: term("voltage-drop", "voltage drop", "ΔU", "volt"),
  permittedVoltageDrop: term("permitted-voltage-drop", "permitted voltage drop", "ΔU,max", "volt"),
  dropPerAmpere: term("drop-per-ampere", "voltage drop per ampere over the length", "z·L", "ohm"),
  dropPerAmpereMetre: term(
    "drop-per-ampere-metre",
    "tabulated voltage drop per ampere and metre",
    "mV/A/m",
    "volt-per-ampere-metre",
  ),
  frequency: term("frequency", "frequency", "f", "hertz"),
  loadPower: term("load-power", "power of the load", "P", "watt"),
} as const;
