/** Words of the settings. */
export const SETTINGS = {
  title: "Settings",
  light: "Light",
  lightHelp: "Dim for dark cupboards and lofts. Classifications never depend on colour.",
  theme: { device: "As the device says", light: "Light", dim: "Dim" },
  storage: "Storage",
  promised: "The browser has promised to keep your jobs when the device runs short of room.",
  notPromised:
    "The browser has not promised to keep your jobs: when the device runs short of room it may throw them away. Ask again, or put the app on the home screen, and take job files off this device.",
  unknown:
    "This browser does not say whether it keeps jobs when the device runs short of room. Take job files off this device.",
  ask: "Ask the browser to keep them",
  room: (used: string, left: string) => `${used} used, ${left} left for this app.`,
  roomUnknown: "This browser does not say how much room is left.",
  offline: "Without a signal",
  ready: "The whole app is on this device and opens without a signal.",
  notReady: "The app is not kept on this device yet. Leave it open with a signal for a moment.",
  about: "About",
  aid: "An aid for people competent in the kind of installation they inspect. It derives what the recorded facts and figures allow; the person who signs judges and is responsible.",
  prevails:
    "BS 7671, the law, instructions of the distributor and of makers, and stricter rules of an authority or licence prevail.",
  licences: "Licences of what is inside",
  private: "Everything stays on this device until you hand it on. Nothing is sent anywhere.",
} as const;
