import { Beside } from "../../parts/beside.tsx";
import { useWide } from "../../parts/use-wide.ts";
import type { ScreenProps } from "../../shell/screens.ts";
import { INSTALLATION } from "../../words/installation.ts";
import { Circuit } from "../circuit/circuit.tsx";
import { BoardParticulars } from "./board.tsx";
import { LineDiagram } from "./line-diagram.tsx";
import { StandsOut } from "./stands-out.tsx";

/** The installation from the origin outwards; or the particulars of one board or circuit of it. */
export default function Installation({ rest: [board, circuit] }: ScreenProps) {
  const wide = useWide();
  if (board === undefined && !wide) return <LineDiagram />;
  const current = [board, circuit].filter((step) => step !== undefined).join("/");
  return (
    <Beside label={INSTALLATION.tree} list={() => <LineDiagram current={current} />}>
      {board === undefined ? (
        <StandsOut />
      ) : circuit === undefined ? (
        <BoardParticulars board={board} />
      ) : (
        <Circuit board={board} circuit={circuit} />
      )}
    </Beside>
  );
}
