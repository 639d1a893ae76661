import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  utimesSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { outputFile } from "../../lib/site/output-file.ts";
import { outputManifest } from "../../lib/site/output-manifest.ts";
import { buildFolders } from "../../lib/site/output-pair.ts";
import type { Losses } from "./killed-run.ts";
import { smallPdf } from "./small-site.ts";
import { smallTheory } from "./small-theory.ts";

/** The site, and the workshop's pages, in the order in which a build swaps them. */
export const OUTPUTS = ["site", "bench"] as const;
/** What no build wrote. */
const FOREIGN = "CNAME";

/** Where an output lies: in its place, or where a swap that was stopped has put it aside. */
export function placeOf(out: string): string {
  return existsSync(out) ? out : join(`${out}.building`, "earlier");
}

/** Put what no build wrote into an output. */
export function addForeign(dir: string): void {
  mkdirSync(join(dir, ".git/refs/tags"), { recursive: true });
  writeFileSync(join(dir, FOREIGN), "mine");
}

export function holdsForeign(dir: string): boolean {
  return (
    existsSync(join(dir, ".git/refs/tags")) &&
    existsSync(join(dir, FOREIGN)) &&
    readFileSync(join(dir, FOREIGN), "utf8") === "mine"
  );
}

/** Files beside the results of a job that must be gone after the next run. */
export function leftovers(folder: string): string[] {
  return readdirSync(folder).filter((name) => /building|lock|rubbish|kept|aside/.test(name));
}

/** The next run comes when a minute has passed: by then a lock's file that says nothing is known to be nobody's. */
function aMinuteLater(folder: string): void {
  const then = Date.now() / 1000 - 90;
  for (const name of leftovers(folder).filter((each) => each.includes(".lock")))
    utimesSync(join(folder, name), then, then);
}

/** Which edition a small site is, when each file of its manifest is there and all are of one edition. */
function edition(dir: string): string | undefined {
  const files = outputManifest(dir)?.files;
  if (files === undefined || ![...files].every((path) => existsSync(join(dir, path))))
    return undefined;
  const text = readFileSync(join(dir, "index.html"), "utf8");
  return existsSync(join(dir, "colours", `${text}.html`)) ? text : undefined;
}

/** After a kill each output is whole, and after the next build nothing lies about. */
export function judgeOutputs(folder: string, where: string, losses: Losses): void {
  const outs = OUTPUTS.map((name) => join(folder, name));
  const told = (word: string): void => {
    for (const out of outs) {
      const place = word === "" ? placeOf(out) : out;
      losses.held(
        ["old", "new"].includes(edition(place) ?? ""),
        `${where}: ${out} is neither old nor new${word}`,
      );
      losses.held(holdsForeign(place), `${where}: what no build wrote is gone from ${out}${word}`);
    }
  };
  told("");
  aMinuteLater(folder);
  try {
    const [site = "", bench = ""] = outs;
    buildFolders(site, bench, join(folder, "content")).discard();
  } catch (error) {
    losses.tell(`${where}: the next build is refused: ${String(error)}`);
  }
  told(" after the next build");
}

export function judgeCards(folder: string, where: string, losses: Losses): void {
  const file = join(folder, "cards.pdf");
  const isWhole = (): boolean =>
    existsSync(file) && [smallPdf("old"), smallPdf("new")].includes(readFileSync(file, "utf8"));
  losses.held(isWhole(), `${where}: the PDF is neither old nor new`);
  aMinuteLater(folder);
  try {
    outputFile(file, join(folder, "content")).write(Buffer.from(smallPdf("new")));
  } catch (error) {
    losses.tell(`${where}: the next run is refused: ${String(error)}`);
  }
  losses.held(isWhole(), `${where}: the PDF is neither old nor new after the next run`);
}

const figure = JSON.stringify(smallTheory(undefined));

/** The cache gives the figure that is worked out without it, and holds one file of it and no rubbish. */
export function judgeCache(folder: string, where: string, losses: Losses): void {
  const cache = { folder: join(folder, "cache"), keeps: true };
  losses.held(JSON.stringify(smallTheory(cache)) === figure, `${where}: another figure`);
  const files = readdirSync(cache.folder).filter((name) => name !== ".gitignore");
  losses.held(
    files.length === 1 && (files[0] ?? "").endsWith(".json"),
    `${where}: the cache holds ${files.join()}`,
  );
}

export function judgeLeftovers(folder: string, where: string, losses: Losses): void {
  const left = leftovers(folder);
  losses.held(left.length === 0, `${where}: left ${left.join()}`);
}
