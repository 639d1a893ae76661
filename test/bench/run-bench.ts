/** `npm run bench`: the parts of the main job; `npm run bench -- --colours N`: the commands, for a range of so many. */
import { parseArgs } from "node:util";

const { colours } = parseArgs({ options: { colours: { type: "string" } } }).values;
if (colours === undefined) await import("./bench.ts");
else {
  const count = Number(colours);
  if (!(Number.isInteger(count) && count >= 39))
    throw new RangeError(
      `--colours is ${colours}; right would be a whole number from 39, the demonstration's own`,
    );
  const { rangeBench } = await import("./range-bench.ts");
  await rangeBench(count);
}
