import { chromium, type BrowserServer } from "playwright-core";
import type { TestProject } from "vitest/node";
import { unpackedChromium } from "./unpacked-chromium.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** Where tests reach the run's one browser: `chromium.connect(inject("browserAddress"))`. */
    readonly browserAddress: string;
  }
}

/** A browser to start, and what its process needs to find. */
interface Program {
  readonly executablePath: string;
  readonly env?: Readonly<Record<string, string>>;
}

/** Most containers have no sandbox for it and little shared memory; the tests draw nothing that wants a graphics card. */
const ARGS = ["--no-sandbox", "--disable-dev-shm-usage", "--disable-gpu"];

/** Start one browser for the run; the function given back stops it. */
export default async function browserServer(project: TestProject): Promise<() => Promise<void>> {
  const server = await startedServer();
  project.provide("browserAddress", server.wsEndpoint());
  return () => server.close();
}

/** The Chromium that MULLSTONE_CHROMIUM names and no other; else the one from npm; else the system's. */
async function startedServer(): Promise<BrowserServer> {
  const named = process.env["MULLSTONE_CHROMIUM"] ?? "";
  const programs: (() => Program | Promise<Program>)[] =
    named === ""
      ? [unpackedChromium, () => ({ executablePath: "/usr/bin/chromium" })]
      : [() => ({ executablePath: named })];
  const failures: unknown[] = [];
  for (const program of programs) {
    try {
      const { executablePath, env = {} } = await program();
      return await chromium.launchServer({
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
