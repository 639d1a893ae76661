/**
 * `npm run edits [-- EDITS [SEED]]`: a small workshop of two languages edited so many times (200 unless said), and
 * after each edit what is made out of the cache held against what is made without it, to the last
 * byte; exit code 1 when anything was stale.
 */
import { join } from "node:path";
import { editedWorkshop } from "./edited-workshop.ts";
import { IN_TWO_LANGUAGES } from "./whole-workshop.ts";
import { runFolder } from "../support/run-folder.ts";

const edits = Number(process.argv[2] ?? 200);
const seed = Number(process.argv[3] ?? 1);
const { folder: home, remove } = runFolder("edits");
process.env["XDG_STATE_HOME"] = join(home, "state");
const started = process.cpuUsage();
const { taken, refused, rendered, stale } = await editedWorkshop(
  IN_TWO_LANGUAGES,
  edits,
  seed,
  home,
  10,
  (done) => process.stderr.write(`${done}\n`),
);
remove();
const { user, system } = process.cpuUsage(started);
process.stdout.write(
  `${[
    ...stale,
    ...Object.entries(taken).map(([kind, count]) => `${kind}: ${count} edits`),
    `${edits} edits from seed ${seed} and ${refused} refused, ${rendered} of them rendered; ${stale.length} stale; ${Math.round((user + system) / 1e6)} s of the processor`,
  ].join("\n")}\n`,
);
process.exitCode = stale.length === 0 ? 0 : 1;
