/** Words about photographs. */
export const PHOTOGRAPHS = {
  take: "Take or add a photograph",
  keeping: "Keeping the photograph …",
  care: "No people, no documents. What the camera writes into the file, the place among it, is left out.",
  cannot: (name: string) => `${name} could not be read as a photograph. Take it again, or choose another file.`,
  elsewhere: "This photograph is on another device.",
  description: "What it shows",
  leaveOut: "Leave out of this observation",
  unnamed: "photograph",
};
