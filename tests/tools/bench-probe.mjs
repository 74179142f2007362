/** Loaded before the program that is measured: writes its CPU time and peak memory where BENCH_PROBE says, at its end. */
import { readFileSync, writeFileSync } from "node:fs";
import { isMainThread } from "node:worker_threads";

if (isMainThread && process.env.BENCH_PROBE)
  process.on("exit", () => {
    const { user, system } = process.cpuUsage();
    writeFileSync(
      process.env.BENCH_PROBE,
      JSON.stringify({
        cpuMs: (user + system) / 1000,
        childrenCpuMs: children(),
        peakKb: process.resourceUsage().maxRSS,
      }),
    );
  });

/** CPU time of ended child processes (a browser), where the system tells: Linux, in hundredths of a second. */
function children() {
  try {
    const fields = readFileSync("/proc/self/stat", "utf8").split(") ")[1].split(" ");
    return 10 * (Number(fields[13]) + Number(fields[14]));
  } catch {
    return 0;
  }
}
