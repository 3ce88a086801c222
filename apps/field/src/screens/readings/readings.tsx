import { Beside } from "../../parts/beside.tsx";
import { useWide } from "../../parts/use-wide.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { READINGS } from "../../words/readings.ts";
import { StandsOut } from "../installation/stands-out.tsx";
import { BoardPage } from "./board-page.tsx";
import { CircuitList } from "./circuit-list.tsx";
import { CircuitPage } from "./circuit-page.tsx";

/** Readings: which circuit, then its tests with the keypad; or the tests at a board. */
export default function Readings({ rest: [board, circuit] }: ScreenProps) {
  const wide = useWide();
  if (board === undefined && !wide) return <CircuitList />;
  const current = [board, circuit].filter((step) => step !== undefined).join("/");
  return (
    <Beside label={READINGS.allDone} list={() => <CircuitList current={current} />}>
      {board === undefined ? (
        <StandsOut />
      ) : circuit === undefined ? (
        <BoardPage board={board} />
      ) : (
        <CircuitPage board={board} circuit={circuit} />
      )}
    </Beside>
  );
}
