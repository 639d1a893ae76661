import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { run, type Losses } from "./killed-run.ts";
import {
  addForeign,
  judgeCache,
  judgeCards,
  judgeLeftovers,
  judgeOutputs,
  OUTPUTS,
} from "./kill-verdicts.ts";
import { smallPdf, writeSmallSite } from "./small-site.ts";

export const JOBS = ["outputs", "cards", "cache"] as const;
export type Job = (typeof JOBS)[number];

const JUDGES = { outputs: judgeOutputs, cards: judgeCards, cache: judgeCache } as const;
/** Longest wait [ms] before a process that only writes is killed: several of its editions, and a figure of the cache. */
const LONGEST_MS = 500;

/** One job killed before and after each change of the disk that it makes. @returns how many kills these were */
export async function placedKills(
  job: Job,
  child: string,
  home: string,
  losses: Losses,
): Promise<number> {
  let kills = 0;
  for (let at = 1; ; at++) {
    for (const moment of ["before", "after"]) {
      const folder = join(home, `${job}-${at}-${moment}`);
      writeEarlier(folder);
      const { signal, code } = await run([child, job, folder, `${at}`, moment], home);
      const where = `${job}, ${moment} change ${at}`;
      if (signal !== "SIGKILL") {
        losses.held(code === 0, `${where}: ended with ${code}`);
        return kills;
      }
      kills += 1;
      JUDGES[job](folder, where, losses);
      judgeLeftovers(folder, where, losses);
      rmSync(folder, { recursive: true, force: true });
    }
  }
}

/** A process that does nothing but write both outputs, cards and the cache, killed at random moments. */
export async function killsOfWriting(
  count: number,
  child: string,
  home: string,
  losses: Losses,
): Promise<number> {
  const folder = join(home, "loop");
  writeEarlier(folder);
  for (let kills = 0; kills < count; kills++) {
    const where = `writing ${kills}`;
    const { signal, code, said } = await run([child, "loop", folder], home, {
      killAfterMs: LONGEST_MS * Math.random(),
      from: "first word",
    });
    losses.held(signal === "SIGKILL", `${where}: ended by itself with ${code}: ${said}`);
    for (const judge of [judgeOutputs, judgeCards, judgeCache, judgeLeftovers])
      judge(folder, where, losses);
  }
  return count;
}

/** Both outputs and cards of an earlier run, and what no build wrote. */
function writeEarlier(folder: string): void {
  mkdirSync(join(folder, "content"), { recursive: true });
  for (const out of OUTPUTS) {
    writeSmallSite(join(folder, out), "old", out === "site" ? "site" : "workshop");
    addForeign(join(folder, out));
  }
  writeFileSync(join(folder, "cards.pdf"), smallPdf("old"));
}
