/**
 * `npm run kills [-- RANDOM]`: what writes is killed (SIGKILL) at every change of the disk that it
 * makes: both outputs of a build, cards, the cache; then a process that does nothing but write these,
 * RANDOM times (200 unless said) at random moments; then a tenth as many whole commands.
 * After each kill every result is the earlier or the new one, whole, with what no build wrote in it;
 * after the next run nothing lies about. Prints its figures; exit code 1 when anything was lost.
 */
import { join } from "node:path";
import { buildSync } from "esbuild";
import { Losses } from "./killed-run.ts";
import { JOBS, killsOfWriting, placedKills } from "./small-kills.ts";
import { killsOfBuilds, killsOfCards } from "./whole-kills.ts";
import { runFolder } from "../support/run-folder.ts";

const asked = Number(process.argv[2] ?? 200);
const { folder: home, remove } = runFolder("kills");
/** In one file, which starts at once. */
const child = join(home, "killed-child.mjs");
buildSync({
  entryPoints: [join(import.meta.dirname, "killed-child.ts")],
  bundle: true,
  platform: "node",
  format: "esm",
  outfile: child,
  logLevel: "error",
});
const losses = new Losses();
const say = (what: string): void => void process.stdout.write(`${what}\n`);
let all = 0;
try {
  for (const job of JOBS) {
    const kills = await placedKills(job, child, home, losses);
    say(`${kills} placed kills of ${job}`);
    all += kills;
  }
  const written = await killsOfWriting(asked, child, home, losses);
  say(`${written} kills of a process that only writes, at random moments`);
  const cards = await killsOfCards(Math.ceil(asked / 50), home, losses);
  const builds = await killsOfBuilds(Math.ceil(asked / 10) - cards, home, losses);
  say(`${builds} builds and ${cards} runs of cards killed at random moments`);
  all += written + builds + cards;
} finally {
  remove();
}
say(`${all} kills, ${losses.count} lost or to mend`);
process.exitCode = losses.count === 0 ? 0 : 1;
