import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { siteServer, workshopServer, type SiteServer } from "../site/site-server.ts";
import type { CommandOptions } from "./command-options.ts";
import { liveBuilds, type BuildsServed } from "./live-builds.ts";

/**
 * Build into a scratch folder, serve the site and, at an address of its own, the workshop's pages, and build again when a record, template,
 * style or module of lib/ is edited. A record error keeps the last good pages.
 */
export async function start(options: CommandOptions): Promise<number> {
  const scratch = mkdtempSync(join(tmpdir(), "mullstone-"));
  const stop = toldToStop();
  const builds = liveBuilds(options, scratch);
  const servers: SiteServer[] = [];
  try {
    const first = await unlessStopped(builds.next(), stop);
    if (first === "stopped") return 0;
    if ("fault" in first) {
      process.stdout.write("no sheets: the records have errors\n");
      return 1;
    }
    const server = await siteServer(first.site, options.port, options.base);
    servers.push(server);
    const workshop = await workshopServer(first.workshop, options.port);
    servers.push(workshop);
    process.stdout.write(`${server.address}\nfor the workshop alone: ${workshop.address}\n`);
    const served: BuildsServed = {
      wanted: () => ({ site: server.wanted(), workshop: workshop.wanted() }),
      gone: server.gone,
      made: (dirs, pages) => {
        const of = { site: server, workshop };
        of[pages.output].made(dirs[pages.output], pages);
      },
    };
    for (;;) {
      const changed = builds.changed().then(async () => builds.next(served));
      const next = await unlessStopped(changed, stop);
      if (next === "stopped") break;
      if ("fault" in next) {
        process.stdout.write("the last good pages stay\n");
        for (const one of servers) one.tell(next.fault);
      } else {
        server.show(next.site);
        workshop.show(next.workshop);
      }
    }
    return 0;
  } finally {
    await Promise.all(servers.map(async ({ close }) => close()));
    await builds.end();
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** Settles at the first signal to stop; a second one ends the program at once. */
async function toldToStop(): Promise<"stopped"> {
  return new Promise((stop) => {
    for (const signal of ["SIGHUP", "SIGINT", "SIGTERM"] as const)
      process.once(signal, () => stop("stopped"));
  });
}

async function unlessStopped<T>(
  work: Promise<T>,
  stop: Promise<"stopped">,
): Promise<T | "stopped"> {
  return Promise.race([work, stop]);
}
