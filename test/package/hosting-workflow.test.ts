import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { isCommand } from "../../lib/commands/command-table.ts";
import { misplacedOption } from "../../lib/commands/given-options.ts";
import { mullstone } from "../support/mullstone.ts";

interface Step {
  readonly run?: string;
  readonly uses?: string;
  readonly with?: Readonly<Record<string, unknown>>;
}
const workflow = parse(readFileSync("assets/hosting/static-host-workflow.yml", "utf8")) as {
  readonly permissions: Readonly<Record<string, string>>;
  readonly jobs: Readonly<Record<string, { readonly steps: readonly Step[] }>>;
};
const steps = Object.values(workflow.jobs).flatMap((job) => job.steps);
const ours = steps.flatMap(({ run = "" }) => run.match(/npx mullstone .*/g) ?? []);

describe("the workflow for a host of static pages", () => {
  test("calls commands of ours with options of theirs", async () => {
    expect(ours).toHaveLength(2);
    const { output } = await mullstone(["--help"]);
    for (const line of ours) {
      const [, command = "", ...words] = line.replace("npx ", "").split(" ");
      expect(output).toContain(`mullstone ${command}`);
      const options = words.filter((word) => word.startsWith("--")).map((word) => word.slice(2));
      expect(
        isCommand(command) ? misplacedOption(command, options) : command,
        line,
      ).toBeUndefined();
      for (const option of options) expect(output, line).toContain(`--${option} `);
    }
  });

  test("publishes into the folder that is handed to the host, and may do no more than that", () => {
    const folder = /--to (\S+)/.exec(ours.join("\n"))?.[1];
    const upload = steps.find(({ uses }) => uses?.startsWith("actions/upload-pages-artifact"));
    expect(upload?.with?.["path"]).toBe(folder);
    expect(workflow.permissions).toEqual({ contents: "read", pages: "write", "id-token": "write" });
  });

  test("no input is put into a shell as it is", () => {
    for (const { run = "" } of steps) expect(run).not.toContain("${{");
  });
});
