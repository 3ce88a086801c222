import { useEffect, useState } from "preact/hooks";

/** From this width on, a list has room beside what is opened from it; the style sheets have the same width. */
const WIDE = "(min-width: 1080px)";

/** Whether there is room for two things side by side. */
export function useWide(): boolean {
  const [wide, setWide] = useState(() => matchMedia(WIDE).matches);
  useEffect(() => {
    const query = matchMedia(WIDE);
    const changed = () => setWide(query.matches);
    query.addEventListener("change", changed);
    changed();
    return () => query.removeEventListener("change", changed);
  }, []);
  return wide;
}
