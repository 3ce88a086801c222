import type { ScreenProps } from "../../shell/screens.ts";
import { BoardPage } from "./board-page.tsx";
import { CircuitList } from "./circuit-list.tsx";
import { CircuitPage } from "./circuit-page.tsx";

/** Readings: which circuit, then its tests with the keypad; or the tests at a board. */
export default function Readings({ rest: [board, circuit] }: ScreenProps) {
  if (board === undefined) return <CircuitList />;
  return circuit === undefined ? <BoardPage board={board} /> : <CircuitPage board={board} circuit={circuit} />;
}
