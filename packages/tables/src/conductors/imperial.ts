import { source } from "../sources.ts";

/** Copper at 17.241 Ω·mm²/km on the geometric area, with 2 % for the lay. An aid for old wiring, no printed table. */
export const IMPERIAL_SOURCE = source("geometry of the stranding", "before 1970", "derived", {
  formula: "17.241 ÷ area × 1.02, at 20 °C",
  doubt: "approximate; old wire varies",
});

/** Strandings of pre-metric cable with their approximate area in mm² and resistance at 20 °C. */
export const IMPERIAL_STRANDINGS = Object.freeze([
  { stranding: "1/.044", area: 0.98, milliohmPerMetre: 17.93 },
  { stranding: "3/.029", area: 1.28, milliohmPerMetre: 13.76 },
  { stranding: "3/.036", area: 1.97, milliohmPerMetre: 8.93 },
  { stranding: "7/.029", area: 2.98, milliohmPerMetre: 5.9 },
  { stranding: "7/.036", area: 4.6, milliohmPerMetre: 3.83 },
  { stranding: "7/.044", area: 6.87, milliohmPerMetre: 2.56 },
  { stranding: "7/.052", area: 9.59, milliohmPerMetre: 1.83 },
  { stranding: "7/.064", area: 14.53, milliohmPerMetre: 1.21 },
]);
