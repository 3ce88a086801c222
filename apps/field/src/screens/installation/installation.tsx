import type { ScreenProps } from "../../shell/screens.ts";
import { Circuit } from "../circuit/circuit.tsx";
import { BoardParticulars } from "./board.tsx";
import { LineDiagram } from "./line-diagram.tsx";

/** The installation from the origin outwards; or the particulars of one board or circuit of it. */
export default function Installation({ rest: [board, circuit] }: ScreenProps) {
  if (board === undefined) return <LineDiagram />;
  return circuit === undefined ? <BoardParticulars board={board} /> : <Circuit board={board} circuit={circuit} />;
}
