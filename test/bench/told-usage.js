// Preloaded by a measured command and the processes that it begins: each writes at its end what it took of the processor and of memory, a line of JSON.
import { appendFileSync } from "node:fs";
import { isMainThread } from "node:worker_threads";

const file = process.env.MULLSTONE_BENCH_USAGE;
if (isMainThread && file !== undefined) {
  // A process that is ended by a signal, as that of photographs, would tell nothing.
  process.once("SIGTERM", () => process.exit());
  process.on("exit", () => {
    const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
    const usage = { cpuS: (userCPUTime + systemCPUTime) / 1e6, largestMb: maxRSS / 1024 };
    appendFileSync(file, `${JSON.stringify(usage)}\n`);
  });
}
