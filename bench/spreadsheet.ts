/**
 * The arithmetic of a spreadsheet against ours, on 10,000 circuits in one run: hot loop against its limit, loop against its
 * parts, R1+R2 against length, capacity against rating, voltage drop, adiabatic size. LibreOffice computes a sheet of
 * formulae; ours weighs the same circuits with grounds. The sheet gives numbers without reasons, bands or missing inputs.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseInspection, resolveInstallation } from "@good-grounds/inspection";
import { weigh } from "@good-grounds/judgement";
import { bestOf, type Row } from "./measure.ts";

const CIRCUITS = 10_000;

function sheet(): string {
  const rows = Array.from({ length: CIRCUITS }, (_, i) => {
    const r = i + 1;
    const [rated, ze, r1r2, zs, celsius, length, perMetre, capacity, ib, drop] = [
      32,
      0.2,
      0.3 + (i % 50) / 100,
      0.5 + (i % 50) / 100,
      12,
      20 + (i % 30),
      19.51,
      27,
      20,
      18,
    ];
    const formulae = [
      `=D${r}+C${r}*(1.2/(1+0.004*(E${r}-20))-1)`,
      `=230*0.95/(5*A${r})`,
      `=IF(K${r}<=L${r};1;0)`,
      `=IF(ABS(D${r}-B${r}-C${r})<=0.05*D${r}+0.03+0.05*B${r}+0.03+0.02*C${r}+0.02;1;0)`,
      `=IF(ABS(C${r}-G${r}*F${r}/1000*(1+0.004*(E${r}-20)))<=0.1*C${r};1;0)`,
      `=IF(A${r}<=H${r};1;0)`,
      `=IF(J${r}*F${r}*I${r}/1000<=11.5;1;0)`,
      `=IF(SQRT((230/D${r})^2*0.1)/115<=1.5;1;0)`,
    ];
    return [rated, ze, r1r2, zs, celsius, length, perMetre, capacity, ib, drop, ...formulae].join("\t");
  });
  return `${rows.join("\n")}\n`;
}

export function benchSpreadsheet(): readonly Row[] {
  const folder = mkdtempSync(join(tmpdir(), "good-grounds-bench-"));
  try {
    writeFileSync(join(folder, "sheet.csv"), sheet());
    const convert = (name: string) => {
      const start = performance.now();
      // Filter tokens: tab separated, UTF-8, and formulae evaluated on loading.
      execFileSync(
        "soffice",
        [
          "--headless",
          "--norestore",
          `-env:UserInstallation=file://${folder}/profile`,
          "--infilter=CSV:9,34,76,1,,0,false,true,false,false,false,-1,true",
          "--convert-to",
          "csv:Text - txt - csv (StarCalc):9,34,76,1,,0,false,true,false",
          "--outdir",
          join(folder, "out"),
          join(folder, name),
        ],
        { stdio: "ignore" },
      );
      return performance.now() - start;
    };
    writeFileSync(join(folder, "empty.csv"), "1\n");
    convert("empty.csv");
    const idle = convert("empty.csv");
    const whole = convert("sheet.csv");
    const first = readFileSync(join(folder, "out", "sheet.csv"), "utf8").split("\n")[0] ?? "";
    const hot = Number(first.split("\t")[10]);
    if (!(Math.abs(hot - (0.5 + 0.3 * (1.2 / 0.968 - 1))) < 1e-6))
      throw new Error(`the spreadsheet did not compute: ${first}`);

    const parsed = parseInspection(readFileSync(new URL("../examples/terraced-house.json", import.meta.url), "utf8"));
    if (!parsed.ok) throw new Error("example does not parse");
    const { file } = parsed;
    const installations = Array.from({ length: Math.ceil(CIRCUITS / (file.boards[0]?.circuits.length ?? 1)) }, () =>
      resolveInstallation(file),
    );
    let kept: unknown;
    for (let i = 0; i < 300; i++) kept = weigh(installations[i] ?? (installations[0] as never));
    const { ours } = bestOf(
      {
        ours: () => {
          for (const one of installations) kept = weigh(one);
        },
      },
      5,
    );
    if (kept === undefined) throw new Error("nothing was weighed");
    return [
      {
        what: "LibreOffice Calc, 8 formulae for each of 10,000 circuits, start and empty sheet taken off",
        value: whole - idle,
        unit: "ms",
      },
      { what: "all checks with grounds on 10,000 circuits", value: ours, unit: "ms", ratio: ours / (whole - idle) },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
