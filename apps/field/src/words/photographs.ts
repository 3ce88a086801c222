/** Words about photographs. */
export const PHOTOGRAPHS = {
  take: "Take or add a photograph",
  keeping: "Keeping the photograph …",
  care: "No people, no documents. What the camera writes into the file, the place among it, is left out.",
  cannot: (name: string) => `${name} could not be read as a photograph. Take it again, or choose another file.`,
  noRoom: (name: string) =>
    `There is no room left for ${name}. Free some space on the device, then add it again; it is not kept yet.`,
  elsewhere: "This photograph is on another device.",
  description: "What it shows",
  leaveOut: "Leave out of this observation",
  unnamed: "photograph",
};
