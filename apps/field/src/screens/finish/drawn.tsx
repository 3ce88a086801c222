import { useRef } from "preact/hooks";
import { FINISH } from "../../words/finish.ts";

const WIDTH = 320;
const HEIGHT = 110;

/** More points than any signature needs; the rest is left off rather than grown without end. */
const LONGEST = 3900;

interface DrawnProps {
  /** The strokes as an SVG path. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** A signature drawn with finger, pen or mouse; the typed name stands for it where it is left empty. */
export function Drawn({ value, onChange }: DrawnProps) {
  const drawing = useRef(false);
  const path = useRef(value);
  path.current = value;
  const point = (event: PointerEvent): string => {
    const box = (event.currentTarget as Element).getBoundingClientRect();
    const at = (from: number, size: number, full: number) => Math.round((from / size) * full * 10) / 10;
    return `${at(event.clientX - box.left, box.width, WIDTH)} ${at(event.clientY - box.top, box.height, HEIGHT)}`;
  };
  const add = (step: string) => {
    if (path.current.length + step.length > LONGEST) return;
    path.current += step;
    onChange(path.current);
  };
  return (
    <div class="field">
      <p class="quiet small">{FINISH.draw}</p>
      <svg
        class="drawn"
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label={FINISH.draw}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          drawing.current = true;
          add(`M${point(event)}`);
        }}
        onPointerMove={(event) => drawing.current && add(`L${point(event)}`)}
        onPointerUp={() => {
          drawing.current = false;
        }}
      >
        <path
          d={value}
          fill="none"
          stroke="currentColor"
          stroke-width="2"
          stroke-linecap="round"
          stroke-linejoin="round"
        />
      </svg>
      {value !== "" && (
        <button type="button" class="plain" onClick={() => onChange("")}>
          {FINISH.clear}
        </button>
      )}
    </div>
  );
}
