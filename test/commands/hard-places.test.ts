import { execFileSync, spawnSync } from "node:child_process";
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { describe, expect, inject, test } from "vitest";
import { BIN } from "../support/mullstone.ts";
import { ownProgram } from "../support/own-program.ts";

const CHILD = join(import.meta.dirname, "../soak/placed-build.ts");

/** A shell in which disks can be mounted that nobody else sees; only root of Linux has one. */
const canMount = spawnSync("unshare", ["-m", "true"]).status === 0;
const canDropRights = process.getuid?.() === 0 && spawnSync("setpriv", ["--version"]).status === 0;

function shell(script: string): { readonly code: number | null; readonly told: string } {
  const { status, stdout, stderr } = spawnSync("unshare", ["-m", "sh", "-c", script], {
    encoding: "utf8",
  });
  return { code: status, told: `${stdout}${stderr}` };
}
const node = `"${process.execPath}" ${ownProgram(CHILD)
  .map((part) => `"${part}"`)
  .join(" ")}`;

describe.skipIf(!canMount)("on a disk of its own", () => {
  test("that is full: said in one line, the earlier output untouched, nothing left", () => {
    const disk = mkdtempSync(join(inject("scratch"), "disk-"));
    const { code, told } = shell(
      `mount -t tmpfs -o size=256k none "${disk}" && ${node} "${disk}/site" old 10 && ${node} "${disk}/site" new 400000; echo "code $?"; cat "${disk}/site/index.html"; ls -A "${disk}"`,
    );
    expect(told).toMatch(
      /site can't be written: the disk is full; the earlier output is untouched\n/,
    );
    expect(told).toMatch(/code 1\noldsite\n/);
    expect(code).toBe(0);
  });

  test("that is the output folder itself: refused before anything is built", () => {
    const disk = mkdtempSync(join(inject("scratch"), "disk-"));
    const { told } = shell(
      `mkdir "${disk}/site" && mount -t tmpfs none "${disk}/site" && ${node} "${disk}/site" new 10; ls -A "${disk}" "${disk}/site"`,
    );
    expect(told).toMatch(/The output folder .*site is a mount point, which no build can replace/);
    expect(told).not.toMatch(/lock|building|index/);
  });

  test("that is read-only: said in one line", () => {
    const disk = mkdtempSync(join(inject("scratch"), "disk-"));
    const { told } = shell(
      `mount -t tmpfs none "${disk}" && mount -o remount,ro "${disk}" && ${node} "${disk}/site" new 10`,
    );
    expect(told).toMatch(
      /^.*site can't be written: the disk is read-only; the earlier output is untouched\n$/,
    );
  });
});

describe.skipIf(!canDropRights)("without the right to write", () => {
  const asNobody = (command: string): string => {
    const { stdout, stderr } = spawnSync(
      "setpriv",
      ["--reuid=65534", "--regid=65534", "--clear-groups", "sh", "-c", command],
      { encoding: "utf8" },
    );
    return `${stdout}${stderr}`;
  };
  // What was translated for the run is nobody else's to read.
  const node = `"${process.execPath}" --import tsx "${CHILD}"`;
  const home = (mode: number): string => {
    const folder = mkdtempSync(join("/tmp", "mullstone-rights-"));
    chmodSync(folder, mode);
    return folder;
  };

  test("in the folder above: one line, and nothing is written", () => {
    const folder = home(0o755);
    expect(asNobody(`${node} "${folder}/site" new 10`)).toMatch(
      /^.*site can't be written: permission denied; the earlier output is untouched\n$/,
    );
    expect(readdirSync(folder)).toEqual([]);
    execFileSync("rm", ["-rf", folder]);
  });

  test("a folder above that may be passed and not listed will do", () => {
    const folder = home(0o733);
    expect(asNobody(`${node} "${folder}/site" new 10`)).toBe("");
    expect(readFileSync(join(folder, "site/index.html"), "utf8").trim()).toBe("new");
    execFileSync("rm", ["-rf", folder]);
  });

  test("another owner's files in the earlier output: the new one is in place, and what is left is named", () => {
    const folder = home(0o777);
    expect(asNobody(`${node} "${folder}/site" old 10`)).toBe("");
    mkdirSync(join(folder, "site/of-root"));
    writeFileSync(join(folder, "site/of-root/file"), "x");
    const told = asNobody(`${node} "${folder}/site" new 10`);
    expect(readFileSync(join(folder, "site/index.html"), "utf8").trim()).toBe("new");
    expect(readFileSync(join(folder, "site/of-root/file"), "utf8")).toBe("x");
    expect(told).toMatch(
      /^$|is left over and can't be removed: it belongs to somebody else|is kept as/,
    );
    expect(asNobody(`${node} "${folder}/site" again 10`)).not.toContain("untouched");
    expect(readFileSync(join(folder, "site/index.html"), "utf8").trim()).toBe("again");
    execFileSync("rm", ["-rf", folder]);
  });
});

test("with few files to open: a build ends whole, or in one line that says so", () => {
  const folder = mkdtempSync(join(inject("scratch"), "files-"));
  mkdirSync(join(folder, "content"));
  writeFileSync(join(folder, "content/workshop.yaml"), "name: Few\n");
  const { stdout, stderr, status } = spawnSync(
    "sh",
    [
      "-c",
      `ulimit -n 40; exec "${process.execPath}" "${BIN}" build --content content --output site`,
    ],
    { cwd: folder, encoding: "utf8" },
  );
  const left = readdirSync(folder).filter((name) => name !== "content" && !name.startsWith("."));
  expect(left).toEqual(status === 0 ? ["_workshop", "site"] : []);
  expect(`${stdout}${stderr}`).toMatch(
    /^(?:0 sheets.*|.*raise the limit (?:of open files )?\(ulimit -n\)(?:; the earlier output is untouched)?)\n$/,
  );
});
