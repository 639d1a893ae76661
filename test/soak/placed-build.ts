/** A small build without Eleventy: `placed-build.ts OUTPUT TEXT BYTES`. What stops it is said in one line. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { buildFolder } from "../../lib/site/output-folder.ts";
import { asFault } from "../../lib/site/output-fault.ts";
import { writeSmallSite } from "./small-site.ts";

const [output = "", text = "", bytes = "0"] = process.argv.slice(2);
try {
  const folder = buildFolder(output, "/content-that-is-nowhere");
  try {
    writeFileSync(join(folder.dir, "big.txt"), "x".repeat(Number(bytes)));
    writeSmallSite(folder.dir, text);
    const left = folder.publish();
    if (left !== undefined) process.stderr.write(`${left}\n`);
  } finally {
    folder.discard();
  }
} catch (error) {
  process.stderr.write(`${asFault(error, output).message}\n`);
  process.exitCode = 1;
}
