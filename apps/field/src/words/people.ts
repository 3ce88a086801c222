import type { INSTRUMENT_RANGES } from "@good-grounds/core";

/** What an instrument measures, in words. */
export const RANGES: Readonly<Record<(typeof INSTRUMENT_RANGES)[number], string>> = {
  continuity: "Continuity",
  insulation: "Insulation resistance",
  loop: "Loop impedance",
  "fault-current": "Prospective fault current",
  "rcd-time": "RCD time",
  electrode: "Earth electrode",
  voltage: "Voltage",
  temperature: "Temperature",
};

/** Words of people and instruments. */
export const PEOPLE = {
  people: "People",
  person: "person",
  addPerson: "Add a person",
  name: "Name",
  position: "Position",
  positions: ["inspector", "qualified supervisor", "assistant"],
  firm: "Firm",
  address: "Address of the firm",
  registration: "Registration",
  atWork: "At work on this device now",
  atWorkHelp: "Every entry from now on carries this name.",
  nobody: "Nobody named",
  instruments: "Instruments",
  instrumentsHelp: "What every reading is taken with.",
  instrument: "instrument",
  addInstrument: "Add an instrument",
  kind: "What it is",
  kinds: [
    "multifunction installation tester",
    "insulation tester",
    "clamp meter",
    "contact thermometer",
    "voltage indicator",
  ],
  serial: "Serial number",
  checked: "Last check",
  checkReference: "Certificate, or page of the check log",
  old: (months: number) => `The last check was ${months} months ago.`,
  accuracy: "Accuracy, from the maker's data",
  accuracyHelp:
    "As the maker states it for each function: a part of the reading and digits of the last place, such as ±(5 % + 3 digits). Without it readings are taken as shown, and no result says how near the limit it really is.",
  accuracyFault: "Write it like ±(5 % + 3 digits), or 2 %.",
  visits: "Days on site",
  visit: "day",
  addVisit: "Add a day",
  date: "Date",
  arrived: "Arrived",
  left: "Left",
  now: "Now",
  note: "Note",
  noteHelp: "Access, who let you in, what was refused.",
  far: (people: number, instruments: number) =>
    `${people} ${people === 1 ? "person" : "people"}, ${instruments} ${instruments === 1 ? "instrument" : "instruments"}`,
} as const;
