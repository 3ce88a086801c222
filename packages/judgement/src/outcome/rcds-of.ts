import type { Installation, ResidualDevice } from "@good-grounds/inspection";

/** Every RCD once: those of the boards, and those of single circuits. */
export function rcdsOf({ boards, circuits }: Pick<Installation, "boards" | "circuits">): readonly ResidualDevice[] {
  return [...new Set([...boards.flatMap(({ rcds }) => rcds), ...circuits.flatMap(({ residual }) => residual.devices)])];
}
