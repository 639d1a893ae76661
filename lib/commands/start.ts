import { mkdtempSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import configure from "../../eleventy.config.ts";
import { freshLib } from "../site/reload-library.ts";
import type { Site } from "../site/site.ts";
import { PACKAGE_ROOT } from "../site/package-root.ts";
import { copyAssets, newEleventy, writeData } from "../site/write-site.ts";
import { counted, seconds } from "./check.ts";
import type { CommandOptions } from "./command-line.ts";

/**
 * Build into a scratch folder, serve it, and build again when a record, template,
 * style or module of lib/ is edited. A record error keeps the last good pages.
 */
export async function start({ contentDir, date, port, claims }: CommandOptions): Promise<number> {
  const scratch = mkdtempSync(join(tmpdir(), "mullstone-"));
  let current: Site | undefined;

  const refresh = async (): Promise<void> => {
    const started = performance.now();
    try {
      const { liveSite } = await freshLib();
      const { site, complaints } = liveSite(contentDir, date, claims);
      for (const line of complaints) process.stderr.write(`${line}\n`);
      if (site === undefined) {
        process.stdout.write(
          current === undefined
            ? "no sheets: the records have errors\n"
            : "the last good pages stay\n",
        );
        return;
      }
      current = site;
      writeData(site, scratch);
      copyAssets(scratch);
      process.stdout.write(`${counted(site.sheetCount, "sheet")}, ${seconds(started)}\n`);
    } catch (error) {
      process.stderr.write(`${String(error)}\n`);
    }
  };

  await refresh();
  if (current === undefined) {
    rmSync(scratch, { recursive: true, force: true });
    return 1;
  }
  const address = port === 0 ? await freePort() : port;
  let isFirst = true;
  const eleventy = await newEleventy(
    scratch,
    (config) => {
      configure(config, () => current ?? { pages: [], files: [], sheetCount: 0 }, true);
      config.setServerOptions({
        port: address,
        portReassignmentRetryCount: 0,
        showAllHosts: false,
        showVersion: false,
      });
      for (const folder of [
        resolve(contentDir),
        ...["lib", "assets", "templates"].map((name) => join(PACKAGE_ROOT, name)),
      ])
        config.addWatchTarget(folder);
      config.on("eleventy.before", async () => {
        if (!isFirst) await refresh();
        isFirst = false;
      });
    },
    { quietMode: true, runMode: "serve" },
  );
  await eleventy.init();
  await eleventy.watch();
  await eleventy.serve(address);
  process.stdout.write(`http://localhost:${address}/\n`);
  await new Promise<void>((stop) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => stop());
  });
  rmSync(scratch, { recursive: true, force: true });
  process.exit(0);
}

async function freePort(): Promise<number> {
  return new Promise((found, failed) => {
    const probe = createServer();
    probe.once("error", failed);
    probe.listen(0, () => {
      const address = probe.address();
      probe.close(() => found(typeof address === "object" && address !== null ? address.port : 0));
    });
  });
}
