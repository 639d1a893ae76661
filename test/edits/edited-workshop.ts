import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { dirname, join } from "node:path";
import { formatDiagnostic } from "../../lib/diagnostics/diagnostic.ts";
import { heldValues, type HeldValues } from "../../lib/kept/held-values.ts";
import { workCacheOf, type WorkCache } from "../../lib/kept/work-cache.ts";
import { keptParsers, type KeptParsers } from "../../lib/records/kept-parsers.ts";
import { loadRecords } from "../../lib/records/load-records.ts";
import { printedSite } from "../../lib/site/printed-site.ts";
import { inOneFolder } from "../../lib/site/one-folder.ts";
import { siteOf } from "../../lib/site/site-of-records.ts";
import type { OutputKind } from "../../lib/site/output-manifest.ts";
import type { Site } from "../../lib/site/site.ts";
import { viewKey } from "../../lib/site/filled-page.ts";
import { writeData, writeSite } from "../../lib/site/write-site.ts";
import { writtenFiles } from "../../lib/site/written-files.ts";
import { chanceOf, chosen, index, type Chance } from "../fuzz/chance.ts";
import type { RecordTexts } from "../support/content-folder.ts";

/** After every date of the records. */
const TODAY = "2026-12-31";

export interface EditsReport {
  /** Edits that the records took, by the folder of the record; files that came and went are "files". */
  readonly taken: Readonly<Record<string, number>>;
  /** Edits that were refused, cold and warm in the same words. */
  readonly refused: number;
  /** Builds that were compared file by file, pages rendered. */
  readonly rendered: number;
  /** What a warm build had otherwise than a cold one, with the edit that shows it. */
  readonly stale: readonly string[];
}

/**
 * Edit a small workshop again and again, and after each edit hold what is made out of the cache
 * against what is made without it, to the last byte.
 * @param home an empty folder for it.
 * @param records of the workshop at first.
 * @param renderEvery of so many edits one is rendered to pages, the workshop's too, which takes longest.
 */
export async function editedWorkshop(
  records: RecordTexts,
  edits: number,
  seed: number,
  home: string,
  renderEvery: number,
  told: (what: string) => void = () => undefined,
): Promise<EditsReport> {
  const chance = chanceOf(seed);
  const content = join(home, "content");
  const texts = new Map(Object.entries(records));
  for (const [path, text] of texts) write(join(content, path), text);
  const warm: Making = {
    // The sources run as they are: to this cache they are one version of the program.
    cache: { ...workCacheOf(content), programPart: () => "of this test" },
    dir: (times) => join(home, `warm-${times}`),
    earlier: join(home, "none"),
  };
  const server: Server = { parsers: keptParsers(), held: heldValues() };
  const taken: Record<string, number> = {};
  const stale: string[] = [];
  let [refused, rendered, done, earlier] = [0, 0, 0, warm.earlier];
  // As a build begins with the output before the earlier one.
  let spare: string | undefined;
  for (let tries = 0; done < edits && tries < 20 * edits; tries++) {
    const { path, text, kind } = edit(texts, chance);
    const before = texts.get(path);
    put(content, path, text);
    const isRendered = (done + 1) % renderEvery === 0;
    // By turns as a command of its own, and as a server that holds what it read and made before.
    if (isRendered && spare !== undefined) {
      renameSync(spare, warm.dir(done));
      spare = undefined;
    }
    const own = tries % 2 === 0 ? { ...warm, earlier } : heldBy(server, { ...warm, earlier });
    const made = await madeWith(own, content, done, isRendered);
    const cold = await madeWith(
      { dir: (times) => join(home, `cold-${times}`), earlier: join(home, "none") },
      content,
      done,
      isRendered,
    );
    const differing = differences(made.files, cold.files);
    if (differing.length > 0)
      stale.push(`edit ${done} (${path}): ${differing.slice(0, 5).join(", ")}`);
    rmSync(join(home, `cold-${done}`), { recursive: true, force: true });
    if (made.isRefused) {
      refused++;
      put(content, path, before);
      continue;
    }
    if (text === undefined) texts.delete(path);
    else texts.set(path, text);
    taken[kind] = (taken[kind] ?? 0) + 1;
    if (isRendered) rendered++;
    if (spare !== undefined) rmSync(spare, { recursive: true, force: true });
    spare = earlier === warm.earlier ? undefined : earlier;
    earlier = warm.dir(done);
    done++;
    told(`${done} of ${edits}`);
  }
  return { taken, refused, rendered, stale };
}

/** What a process holds that makes a site again and again. */
interface Server {
  readonly parsers: KeptParsers;
  readonly held: HeldValues;
}

function heldBy({ parsers, held }: Server, making: Making): Making {
  return { ...making, parsers, ...(making.cache && { cache: { ...making.cache, held } }) };
}

interface Making {
  readonly cache?: WorkCache;
  readonly parsers?: KeptParsers;
  readonly dir: (times: number) => string;
  readonly earlier: string;
}

interface MadeFiles {
  readonly isRefused: boolean;
  /** By path; of a build that is not rendered a page's view. */
  readonly files: ReadonlyMap<string, string>;
}

async function madeWith(
  { cache, dir, earlier, parsers = keptParsers() }: Making,
  content: string,
  times: number,
  isRendered: boolean,
): Promise<MadeFiles> {
  if (cache !== undefined) parsers.begin(cache);
  const { records, diagnostics } = loadRecords(content, dirname(content), TODAY, parsers);
  if (cache !== undefined) parsers.keep(cache);
  const told = new Map([["diagnostics", diagnostics.map(formatDiagnostic).join("\n")]]);
  if (records === undefined) return { isRefused: true, files: told };
  const { site: onScreen, workshop, warnings } = siteOf(records, records.newestDate, cache);
  told.set("warnings", warnings.map(formatDiagnostic).join("\n"));
  const [out, bench] = [join(dir(times), "site"), join(dir(times), "workshop")];
  const { site } = await printedSite(onScreen, join(earlier, "site"), cache);
  const ofWorkshop = workshop({ isPrinted: isRendered, printedCards: undefined });
  const outputs: readonly (readonly [Site, string, OutputKind])[] = [
    [inOneFolder(site), out, "site"],
    [ofWorkshop, bench, "workshop"],
  ];
  for (const [one, to, output] of outputs) {
    mkdirSync(to, { recursive: true });
    if (isRendered)
      await writeSite(one, {
        output,
        kind: "paper",
        dir: to,
        earlierDir: join(earlier, output),
        ...(cache === undefined ? {} : { cache }),
      });
    else writeData(one, writtenFiles(to, join(earlier, output)));
    const views = isRendered ? [] : viewsOf(one);
    for (const [path, text] of [...views, ...filesIn(to)]) told.set(`${output}/${path}`, text);
  }
  for (const { keepSteps } of [onScreen, ...(onScreen.translated ?? []).map((one) => one.site)])
    keepSteps?.();
  return { isRefused: false, files: told };
}

function viewsOf({ pages }: Site): [string, string][] {
  return pages.map((page) => [
    page.path,
    `${page.key()} ${viewKey({ site: page.site, view: page.view })}`,
  ]);
}

function filesIn(dir: string): [string, string][] {
  return readdirSync(dir, { recursive: true, encoding: "utf8" })
    .filter((path) => statSync(join(dir, path)).isFile())
    .map((path) => [path, readFileSync(join(dir, path), "latin1")]);
}

function differences(
  one: ReadonlyMap<string, string>,
  other: ReadonlyMap<string, string>,
): string[] {
  return [...new Set([...one.keys(), ...other.keys()])].filter(
    (path) => one.get(path) !== other.get(path),
  );
}

interface Edit {
  readonly path: string;
  /** Undefined where the file goes. */
  readonly text: string | undefined;
  readonly kind: string;
}

const CAME = /-copy-\d+\./;

/** A number moved a little, a note lengthened, a record copied under another name, or such a copy removed. */
function edit(texts: ReadonlyMap<string, string>, chance: Chance): Edit {
  const kinds = [...new Set([...texts.keys()].map(kindOf)), "files"];
  const kind = chosen(chance, kinds);
  if (kind === "files") return { ...cameOrWent(texts, chance), kind };
  const path = chosen(
    chance,
    [...texts.keys()].filter((one) => kindOf(one) === kind),
  );
  const text = texts.get(path) ?? "";
  return { path, kind, text: chance() < 0.2 ? reworded(text, path) : renumbered(text, chance) };
}

function kindOf(path: string): string {
  return path.split("/")[0] ?? path;
}

function cameOrWent(texts: ReadonlyMap<string, string>, chance: Chance): Omit<Edit, "kind"> {
  const copies = [...texts.keys()].filter((path) => CAME.test(path));
  if (copies.length > 0 && chance() < 0.5) return { path: chosen(chance, copies), text: undefined };
  const path = chosen(
    chance,
    [...texts.keys()].filter((one) => /^(?:colours|pigments|answers|sources)\//.test(one)),
  );
  const name = `-copy-${index(chance, 3)}.`;
  return {
    path: path.replace(/(?:-copy-\d)?\./, name),
    text: (texts.get(path) ?? "").replace(/^(name|question|citation): (.*)$/m, "$1: $2 again"),
  };
}

function reworded(text: string, path: string): string {
  return path.endsWith(".md")
    ? `${text}More of it.\n`
    : text.replace(/^(name|citation): "?([^"\n]*)"?$/m, '$1: "$2 x"');
}

const NUMBER = /(?<![\w.-])\d+(?:\.\d+)?(?![\w.-])/g;

function renumbered(text: string, chance: Chance): string {
  const found = [...text.matchAll(NUMBER)];
  if (found.length === 0) return text;
  const { index: from, 0: number } = chosen(chance, found);
  const decimals = number.split(".")[1]?.length ?? 0;
  const moved = (Number(number) * (0.9 + 0.2 * chance())).toFixed(Math.min(decimals + 1, 4));
  return text.slice(0, from) + moved + text.slice(from + number.length);
}

function put(content: string, path: string, text: string | undefined): void {
  if (text === undefined) rmSync(join(content, path), { force: true });
  else write(join(content, path), text);
}

function write(file: string, text: string): void {
  mkdirSync(dirname(file), { recursive: true });
  writeFileSync(file, text);
}
