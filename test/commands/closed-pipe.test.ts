import { spawn } from "node:child_process";
import { expect, test } from "vitest";
import { BIN } from "../support/mullstone.ts";

test("a reader that closes the pipe early, as head does, is no fault", async () => {
  const command = spawn(process.execPath, [BIN, "--help"], { stdio: ["ignore", "pipe", "pipe"] });
  command.stdout.destroy();
  let complaints = "";
  command.stderr.setEncoding("utf8").on("data", (text: string) => (complaints += text));
  const code = await new Promise((done) => {
    command.on("close", done);
  });
  expect([code, complaints]).toEqual([0, ""]);
});
