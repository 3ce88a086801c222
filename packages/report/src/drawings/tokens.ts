/** The few values that carry the look of every drawing. */
export const TOKENS = Object.freeze({
  paper: "#fbf8f2",
  ink: "#1d2a44",
  faint: "#8a92a3",
  rule: "#c9c5bb",
  copper: "#a4541f",
  font: "Source Sans 3, sans-serif",
  size: 10,
  small: 8.5,
});
