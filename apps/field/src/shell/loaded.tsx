import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { SHELL } from "../words/shell.ts";
import type { Screen, ScreenProps } from "./screens.ts";

interface LoadedProps extends ScreenProps {
  readonly screen: Screen;
  readonly onDrawn: () => void;
}

/** A screen, fetched when it is first opened. */
export function Loaded({ screen, rest, onDrawn }: LoadedProps) {
  const [loaded, setLoaded] = useState<{ readonly View: ComponentType<ScreenProps> } | { readonly failed: unknown }>();
  useEffect(() => {
    let left = false;
    screen.load().then(
      (piece) => !left && setLoaded({ View: piece.default }),
      (failed: unknown) => !left && setLoaded({ failed }),
    );
    return () => {
      left = true;
    };
  }, [screen]);
  useEffect(() => {
    if (loaded !== undefined) onDrawn();
  }, [loaded]);
  if (loaded === undefined) return <p aria-busy="true">{SHELL.loading}</p>;
  // Thrown here, the error reaches the boundary that says what to do.
  if ("failed" in loaded) throw loaded.failed;
  return <loaded.View rest={rest} />;
}
