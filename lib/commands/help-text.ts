import { keysOf } from "../quantities/members.ts";
import { COMMANDS, TAKES } from "./command-table.ts";
import { OPTIONS } from "./option-table.ts";

/** What `--help` prints. */
export function helpText(): string {
  return [
    "mullstone: colour sheets from a workshop's records",
    "",
    ...keysOf(COMMANDS).map((name) => line(`mullstone ${name}`, TAKES[name], 30, COMMANDS[name])),
    "",
    ...keysOf(OPTIONS).map((name) =>
      line(`--${name}`, OPTIONS[name].takes, 17, OPTIONS[name].help),
    ),
    "",
  ].join("\n");
}

/** A name with what stands behind it, and from a column of its own on what it does. */
function line(name: string, takes: string | undefined, column: number, help: string): string {
  const written = `${name} ${takes ?? ""}`.padEnd(column);
  return `  ${written}${help.replaceAll("\n", `\n${" ".repeat(column + 2)}`)}`;
}
