/** Places of the farm and its electrode, as they were found. */
export const THINGS = {
  places: [
    { id: "barn-floor", name: "barn", kind: "outbuilding", comers: "anyone", wetness: "damp", special: ["farm"] },
    {
      id: "parlour",
      name: "milking parlour",
      kind: "outbuilding",
      comers: "keeper",
      wetness: "wet",
      conducting: true,
      special: ["farm"],
    },
  ],
  electrodes: [
    {
      id: "rod",
      name: "rod beside the back door",
      kind: "rod",
      accessible: true,
      state: { notKnown: "limited", reason: "the clamp is under the lid of a chamber that does not lift" },
    },
  ],
};
