import { join, relative, resolve, sep } from "node:path";
import configure from "../../eleventy.config.ts";
import type { EleventyOptions, EleventyRun } from "./eleventy-types.ts";
import { importPackage } from "../kept/beside-program.ts";
import { OutputFault } from "./output-fault.ts";
import { PACKAGE_ROOT } from "./package-root.ts";
import type { PageEntry } from "./page-entry.ts";
import type { Site } from "./site.ts";
import { pageEnvironment } from "./template-environment.ts";

const TEMPLATES_INPUT = join(PACKAGE_ROOT, "templates", "entry");
/** What the one template that Eleventy sees is made of. */
const EVERY_PAGE = "partials/every-page.njk";

/** Eleventy takes as long to load as so many pages take to render. Our own choice. */
const WORTH_ELEVENTY = 60;

/** Pages of a site as HTML, one after another: a few by the environment that Eleventy is handed, which comes to the same. */
export async function* renderedPages(
  site: Site,
  dir: string,
): AsyncGenerator<readonly [page: PageEntry, html: string]> {
  if (site.pages.length >= WORTH_ELEVENTY) yield* byEleventy(site, dir);
  else for (const page of site.pages) yield [page, rendered(page)];
}

function rendered(entry: PageEntry): string {
  return pageEnvironment().render(EVERY_PAGE, { entry });
}

/** Eleventy hands them over unwritten, since a page is finished before it is written. @param dir that Eleventy takes for their place. */
async function* byEleventy(
  site: Site,
  dir: string,
): AsyncGenerator<readonly [page: PageEntry, html: string]> {
  const eleventy = await newEleventy(site, dir);
  const rendered = new Map(
    (await eleventy.toJSON()).map(({ outputPath, content }) => [
      relative(dir, resolve(outputPath)).replaceAll(sep, "/"),
      content,
    ]),
  );
  const pages = site.pages.map((page) => [page, rendered.get(page.path) ?? ""] as const);
  // A template that could not be read leaves a page without a letter in it, and no other complaint.
  const absent = pages.filter(([, html]) => html.trim() === "");
  if (absent.length > 0)
    throw new OutputFault(
      `${pages.length - absent.length} pages of ${pages.length} were written; these are missing: ${absent
        .slice(0, 3)
        .map(([{ path }]) => path)
        .join(", ")}`,
    );
  yield* pages;
}

/** The package has no types to be found. */
const ELEVENTY = "@11ty/eleventy";

/** Apart from what is rendered, of which nothing hangs on the run: the environment holds the latest of those. */
async function newEleventy(site: Site, dir: string): Promise<EleventyRun> {
  // It would begin a thread that loads modules again once they are edited; none of ours are while it runs.
  process.env["ELEVENTY_SKIP_ESM_RESOLVER"] = "1";
  const { default: Eleventy } = (await importPackage(ELEVENTY)) as {
    default: new (input: string, output: string, options: EleventyOptions) => EleventyRun;
  };
  const eleventy = new Eleventy(TEMPLATES_INPUT, dir, {
    configPath: false,
    source: "script",
    quietMode: true,
    runMode: "build",
    config: (config) => {
      configure(config, () => site);
      // Its logger, disabled below, is not what tells of a slow transform.
      config.benchmarkManager.get("Configuration").setIsVerbose(false);
    },
  });
  eleventy.disableLogger();
  return eleventy;
}
