// Preloaded by a measured command: at its end it writes what it took of the processor and of memory.
import { writeFileSync } from "node:fs";
import { isMainThread } from "node:worker_threads";

const file = process.env.MULLSTONE_BENCH_USAGE;
if (isMainThread && file !== undefined)
  process.on("exit", () => {
    const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
    writeFileSync(
      file,
      JSON.stringify({ cpuS: (userCPUTime + systemCPUTime) / 1e6, largestMb: maxRSS / 1024 }),
    );
  });
