import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { formatted } from "@good-grounds/topics/texts";
import { EXIT, type ExitCode, type Host, Stop } from "../../host.ts";
import { reason } from "../../reason-of.ts";
import { faultsText, textsIn } from "../../topics-in.ts";
import type { TopicsOptions } from "./topics.ts";

/** `topics format FOLDER [--check]`: writes every topic text in its one spelling; with --check says which are not. */
export function formatCommand(path: string, { check }: Pick<TopicsOptions, "check">, host: Host): ExitCode {
  const texts = textsIn(path).filter(({ file }) => file.endsWith(".topic"));
  let wrong = 0;
  for (const { file, text } of texts) {
    const made = formatted(text, file);
    if (made.text === text) continue;
    if (made.text === undefined) {
      wrong += 1;
      host.stderr.write(`${faultsText(path, made.faults, texts)}\n\n`);
    } else if (check) {
      wrong += 1;
      host.stderr.write(
        `${join(path, file)}: not in its one spelling; \`goodgrounds topics format ${path}\` writes it\n`,
      );
    } else {
      write(join(path, file), made.text);
      host.stdout.write(`${join(path, file)}\n`);
    }
  }
  return wrong > 0 ? EXIT.input : EXIT.done;
}

function write(path: string, text: string): void {
  try {
    writeFileSync(path, text);
  } catch (error) {
    throw new Stop(EXIT.unreadable, `${path}: cannot be written (${reason(error)}).`);
  }
}
