/** Words of the small shared parts. */
export const PARTS = {
  limited: "Limited",
  notVerified: "Not verified",
  notApplicable: "Not applicable",
  reason: "Why",
  reasonNeeded: "Say why in a line.",
  two: "Two answers stand here. Which is right?",
  keepThis: "Keep this one",
  nothing: "nothing",
  removed: "taken out",
  wholeNumber: "A whole number, such as 12.",
  close: "Close",
  cancel: "Cancel",
  remove: (what: string) => `Take out ${what}`,
  wasRemoved: (what: string) => `${what} was taken out.`,
  undo: "Put back",
  choose: "Choose",
  none: "none recorded",
  live: {
    title: "Live tests wait for continuity",
    not: {
      none: "No reading yet proves the protective conductor of this circuit.",
      notTaken: (name: string, reason: string) =>
        `${name} was not taken${reason === "" ? "" : `: ${reason}`}. Nothing else proves the protective conductor of this circuit.`,
      open: (name: string, shown: string) =>
        `${name} is beyond the range of the display (${shown}): the protective conductor is open, or was not reached.`,
      tooHigh: (name: string, shown: string, limit: string) =>
        `${name} is ${shown}. Above ${limit} a reading may be chance metal or a bad joint. Where the circuit is that long, record the length and sizes of its cable: the reading is then held against them.`,
      moreThanCable: (name: string, shown: string) =>
        `${name} is ${shown}, far more than the recorded length and sizes of the cable give: a bad joint, chance metal, or a length that is not right.`,
      lessThanCable: (name: string, shown: string) =>
        `${name} is ${shown}, far less than the recorded length and sizes of the cable give: taken at a nearer point, through metal beside the conductor, or a length that is not right.`,
      nothing: (name: string, shown: string) =>
        `${name} is ${shown}: no conductor has no resistance. Leads that touch show this, or leads that were nulled in the wrong place.`,
      unreadable: (name: string, shown: string) => `${name} is recorded as “${shown}”, which is no resistance.`,
      names: {
        r1r2: "R1+R2",
        r2Only: "R2",
        r2: "r2 of the ring",
        crossLineCpc: "R1+R2 at a point of the ring",
      } as Readonly<Record<string, string>>,
    },
    danger: "A live test can put mains voltage on metalwork that is not connected to earth.",
    older: (reason: string) =>
      `The reason that was recorded was written before this reading was known: ${reason}. If live tests are needed all the same, write why.`,
    first: "Measure R1+R2, R2 or the ring first, dead.",
    override: "Test live all the same",
    ask: "Reason, which goes into the record",
    confirm: "Record the reason and test live",
    given: (reason: string) => `Tested live before continuity was proved: ${reason}`,
    withdraw: "Withdraw",
  },
} as const;
