import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { changesBetween, removedColours, type ChangedThing } from "../changes/changes-between.ts";
import { isMove, priceAct, type PriceMove } from "../changes/price-act.ts";
import { weakenings } from "../changes/weakenings.ts";
import { fields, publishedState } from "../changes/published-state.ts";
import { changeSentences, changeTexts } from "../present/change-text.ts";
import { fileDifferences } from "../publish/file-differences.ts";
import { publishTarget, type PublishTarget } from "../publish/publish-target.ts";
import { MANIFESTS_FOLDER } from "../records/content-tree.ts";
import { LANGUAGES } from "../quantities/languages.ts";
import { OutputFault } from "../site/output-fault.ts";
import { MANIFEST, MANIFEST_KIND } from "../site/output-manifest.ts";
import { WORDS } from "../words/languages.ts";
import { build } from "./build.ts";
import type { CommandOptions } from "./command-options.ts";
import type { Confirmation } from "./option-table.ts";
import { complaint, counted, say, seconds } from "./told.ts";

interface PublishOptions {
  readonly to: string | undefined;
  readonly endpoint: string | undefined;
  readonly dryRun: boolean;
  readonly confirmed: readonly Confirmation[];
}

/** Build the site, say what a customer would see differ from what stands at the target, and bring it there. */
export async function publish(
  options: CommandOptions,
  { to, endpoint, dryRun, confirmed }: PublishOptions,
): Promise<number> {
  const started = performance.now();
  if (to === undefined) return complaint("--to is missing: it says where the site is published to");
  const scratch = mkdtempSync(join(tmpdir(), "mullstone-publish-"));
  try {
    const target = publishTarget(to, options.contentDir, endpoint);
    const before = await broughtManifests(target, scratch);
    const code = await build({ ...options, since: join(scratch, MANIFEST) });
    if (code !== 0) return code;
    const now: unknown = JSON.parse(readFileSync(join(options.outputDir, MANIFEST), "utf8"));
    const changed = changesBetween(publishedState(before), publishedState(now));
    const files = fileDifferences(before, now);
    tell(changed, files, dryRun);
    const wanted = confirmations(changed).filter((one) => !confirmed.includes(one));
    for (const one of wanted) say(REASONS[one]);
    if (dryRun) say(`${summary(files)}, ${seconds(started)}: nothing was moved`);
    else if (wanted.length > 0)
      return complaint(`--confirm ${wanted.join(",")} is missing: nothing was moved`);
    else if (files.sent.length + files.removed.length === 0)
      say(`${to} holds this site already, ${seconds(started)}: nothing was moved`);
    else {
      await target.ship({ outputDir: options.outputDir, ...files });
      keepManifest(options.contentDir, now);
      say(`${summary(files)}, ${seconds(started)}: ${to}`);
    }
    return 0;
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** Of a target that holds nothing yet: everything is new. */
const NOTHING_PUBLISHED = { kind: MANIFEST_KIND, sheets: [], answers: [], cards: [], files: [] };

/** What the target's manifest says; it and those of other languages now lie in `scratch`. @throws OutputFault for another's manifest */
async function broughtManifests(target: PublishTarget, scratch: string): Promise<unknown> {
  const bring = async (path: string): Promise<unknown> => {
    const bytes = await target.read(path);
    if (bytes === undefined) return undefined;
    const manifest = parsed(bytes);
    if (fields(manifest)["kind"] !== MANIFEST_KIND)
      throw new OutputFault(
        `${path} of the target is no manifest of ours: nothing is published over what somebody else made`,
      );
    mkdirSync(dirname(join(scratch, path)), { recursive: true });
    writeFileSync(join(scratch, path), bytes);
    return manifest;
  };
  const own = await bring(MANIFEST);
  if (own === undefined) {
    writeFileSync(join(scratch, MANIFEST), JSON.stringify(NOTHING_PUBLISHED));
    return NOTHING_PUBLISHED;
  }
  const listed = publishedState(own).files;
  for (const language of LANGUAGES)
    if (listed.includes(`${language}/${MANIFEST}`)) await bring(`${language}/${MANIFEST}`);
  return own;
}

function parsed(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(Buffer.from(bytes).toString("utf8"));
  } catch {
    return undefined;
  }
}

/** The pages that are out there from now on, so that `check` holds them. */
function keepManifest(contentDir: string, manifest: unknown): void {
  const { date } = manifest as { readonly date?: string };
  const folder = join(contentDir, MANIFESTS_FOLDER);
  mkdirSync(folder, { recursive: true });
  writeFileSync(
    join(folder, "published.json"),
    `${JSON.stringify({ kind: MANIFEST_KIND, ...(date === undefined ? {} : { date }), files: publishedState(manifest).files.filter((path) => path.endsWith(".html")) }, null, 1)}\n`,
  );
}

const WEAKENED = { weaker: "a weaker caution", another: "another caution" } as const;

function tell(
  changed: readonly ChangedThing[],
  { added, changed: other, removed }: ReturnType<typeof fileDifferences>,
  dryRun: boolean,
): void {
  const act = priceAct(changed);
  for (const move of act) say(priceMoveText(move));
  // One act is told at once; each of its prices is there to be read before anything moves.
  for (const thing of act.length > 0 && !dryRun ? withoutPrices(changed) : changed)
    for (const sentence of changeSentences(thing, WORDS.en)) say(`${thing.name}: ${sentence}`);
  for (const thing of changed)
    for (const { is, change } of weakenings(thing))
      for (const sentence of changeTexts(change, thing.what, WORDS.en))
        say(`${WEAKENED[is]}: ${thing.name}: ${sentence}`);
  if (!dryRun) return;
  for (const path of added) say(`new      ${path}`);
  for (const path of other) say(`changed  ${path}`);
  for (const path of removed) say(`removed  ${path}`);
}

/** "Prices of 14 colours rise by 3 to 8 %." */
function priceMoveText({ way, colours, leastPercent, mostPercent }: PriceMove): string {
  const [least, most] = [leastPercent, mostPercent].map((percent) =>
    String(Number(percent.toPrecision(percent < 10 ? 1 : 2))),
  );
  const by = least === most ? `${least} %` : `${least} to ${most} %`;
  return `Prices of ${counted(colours, "colour")} ${way} by ${by}.`;
}

function withoutPrices(changed: readonly ChangedThing[]): ChangedThing[] {
  return changed.map((thing) => ({
    ...thing,
    changes: thing.changes.filter((change) => !isMove(change)),
  }));
}

const REASONS: Readonly<Record<Confirmation, string>> = {
  removals: "a colour is removed: --confirm removals says that it is meant",
  cautions:
    "a caution gets weaker, or gives way to another: --confirm cautions says that it is meant",
};

function confirmations(changed: readonly ChangedThing[]): Confirmation[] {
  return [
    ...(removedColours(changed).length > 0 ? (["removals"] as const) : []),
    ...(changed.some((thing) => weakenings(thing).length > 0) ? (["cautions"] as const) : []),
  ];
}

function summary({ added, changed, removed }: ReturnType<typeof fileDifferences>): string {
  return `${counted(added.length, "new file")}, ${changed.length} changed, ${removed.length} removed`;
}
