import { chromium, type Browser } from "playwright-core";
import { unpackedChromium } from "./unpacked-chromium.ts";

/** A browser to start, and what its process needs to find. */
interface Program {
  readonly executablePath: string;
  readonly env?: Readonly<Record<string, string>>;
}

/** Most containers have no sandbox for it and little shared memory; the tests draw nothing that wants a graphics card. */
const ARGS = ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"];

let started: Promise<Browser> | undefined;

/** The worker's one browser: started when a test first asks, and gone with the worker. */
export function startedBrowser(): Promise<Browser> {
  return (started ??= start());
}

/** The Chromium that MULLSTONE_CHROMIUM names and no other; else the one from npm; else the system's. */
async function start(): Promise<Browser> {
  const named = process.env["MULLSTONE_CHROMIUM"] ?? "";
  const programs: (() => Program | Promise<Program>)[] =
    named === ""
      ? [unpackedChromium, () => ({ executablePath: "/usr/bin/chromium" })]
      : [() => ({ executablePath: named })];
  const failures: unknown[] = [];
  for (const program of programs) {
    try {
      const { executablePath, env = {} } = await program();
      return await chromium.launch({
        executablePath,
        args: ARGS,
        env: { ...process.env, ...env },
      });
    } catch (failure) {
      failures.push(failure);
    }
  }
  throw new AggregateError(
    failures,
    `The failure to start a browser, expected one of ${programs.length} to run; MULLSTONE_CHROMIUM may name another\n${failures.map(String).join("\n")}`,
  );
}
