import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { contentKey } from "../../lib/sheet/revision.ts";
import { fileHashes } from "../commands/file-hashes.ts";
import { fourColourWorkshop } from "../commands/demonstration-part.ts";
import type { RecordTexts } from "../support/content-folder.ts";
import { BIN } from "../support/mullstone.ts";
import { run, type Losses } from "./killed-run.ts";
import { addForeign, holdsForeign, judgeLeftovers, OUTPUTS, placeOf } from "./kill-verdicts.ts";

/** A command whose results change with the name of the workshop. */
interface Killed {
  readonly command: string;
  readonly records: RecordTexts;
  readonly options: readonly string[];
  readonly results: readonly string[];
}

/** The least that builds, since a kill that comes late costs a whole build. */
const BUILD: Killed = {
  command: "build",
  records: {
    "workshop.yaml": "name: First\n",
    "pigments/lamp-black.yaml": "name: Lamp black\n",
    "colours/lamp-black.md":
      "---\nname: Lamp Black\npigments: [{ pigment: lamp-black }]\nmasstone: { munsell: N 1.5/ }\n---\n",
  },
  options: ["--output", "site", "--workshop", "bench"],
  results: OUTPUTS,
};
/** The four colours have no price, without which a card is printed when it is asked for. */
const CARDS: Killed = {
  command: "cards",
  records: fourColourWorkshop(),
  options: ["--output", "cards.pdf", "--incomplete"],
  results: ["cards.pdf"],
};

/** Whole commands killed again and again at random moments while their records change between two editions. */
export async function killsOfBuilds(count: number, home: string, losses: Losses): Promise<number> {
  return killsOf(BUILD, count, join(home, "builds"), losses);
}

export async function killsOfCards(count: number, home: string, losses: Losses): Promise<number> {
  return killsOf(CARDS, count, join(home, "cards"), losses);
}

async function killsOf(
  { command, records, options, results }: Killed,
  count: number,
  folder: string,
  losses: Losses,
): Promise<number> {
  const args = [BIN, command, ...options];
  const isBuild = command === "build";
  /** What each result is, whole: of a folder what a build wrote. */
  const now = (): readonly string[] => results.map((name) => resultHash(join(folder, name)));
  const editions: (readonly string[])[] = [];
  let wholeMs = 0;
  for (const name of ["First", "Second"]) {
    writeRecords(folder, records, name);
    const started = performance.now();
    const { code, said } = await run(args, folder);
    wholeMs = performance.now() - started;
    losses.held(code === 0, `the first ${command} fails: ${said}`);
    editions.push(now());
  }
  for (const [at, name] of results.entries())
    losses.held(
      editions[0]?.[at] !== editions[1]?.[at] && editions[0]?.[at] !== "",
      `two editions of ${name} are alike`,
    );
  if (isBuild) for (const name of results) addForeign(join(folder, name));
  const judge = (where: string): void => {
    for (const [at, hash] of now().entries()) {
      const name = results[at] ?? "";
      losses.held(
        editions.some((edition) => edition[at] === hash),
        `${where}: ${name} is neither of its two editions`,
      );
      if (isBuild)
        losses.held(
          holdsForeign(placeOf(join(folder, name))),
          `${where}: what no build wrote is gone from ${name}`,
        );
    }
  };
  let kills = 0;
  while (kills < count) {
    writeRecords(folder, records, kills % 2 === 0 ? "First" : "Second");
    const { signal, code, said } = await run(args, folder, {
      killAfterMs: Math.random() * 1.05 * wholeMs,
    });
    losses.held(signal === "SIGKILL" || code === 0, `${command} ${kills} is refused: ${said}`);
    judge(`${command} ${kills}`);
    if (signal === "SIGKILL") kills += 1;
  }
  const { code, said } = await run(args, folder);
  losses.held(code === 0, `${command} after all kills fails: ${said}`);
  judge(`${command} after all kills`);
  judgeLeftovers(folder, `${command} after all kills`, losses);
  return kills;
}

function writeRecords(folder: string, records: RecordTexts, name: string): void {
  for (const [path, text] of Object.entries(records)) {
    const file = join(folder, "content", path);
    mkdirSync(join(file, ".."), { recursive: true });
    writeFileSync(
      file,
      path === "workshop.yaml" ? text.replace(/^name: .*$/m, `name: ${name}`) : text,
    );
  }
}

/** Empty for what is not there. */
function resultHash(place: string): string {
  if (place.endsWith(".pdf")) return existsSync(place) ? contentKey(readFileSync(place)) : "";
  const hashes = Object.entries(fileHashes(placeOf(place))).filter(([path]) => path !== "CNAME");
  return hashes.length === 0 ? "" : JSON.stringify(hashes);
}
