import { execFile } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { promisify } from "node:util";

const MODULES = join(import.meta.dirname, "../../node_modules");

/**
 * The Chromium that npm brought, unpacked once an install with the libraries that
 * a bare machine lacks. It is unpacked into a folder of its own that then takes its
 * name whole: a run that was stopped, or a second one at the same time, spoils nothing.
 */
export async function unpackedChromium(): Promise<{
  executablePath: string;
  env: Record<string, string>;
}> {
  const { version } = JSON.parse(
    readFileSync(join(MODULES, "@sparticuz/chromium/package.json"), "utf8"),
  ) as { version: string };
  const cache = join(MODULES, ".cache");
  const folder = join(cache, `chromium-${version}`);
  if (!existsSync(folder)) {
    mkdirSync(cache, { recursive: true });
    const unpacking = mkdtempSync(join(cache, "unpacking-"));
    await unpackInto(unpacking);
    try {
      renameSync(unpacking, folder);
    } catch (error) {
      rmSync(unpacking, { recursive: true, force: true });
      if (!existsSync(folder)) throw error;
    }
  }
  return {
    executablePath: join(folder, "chromium"),
    env: {
      LD_LIBRARY_PATH: join(folder, "al2023", "lib"),
      FONTCONFIG_FILE: fontConfiguration(folder),
    },
  };
}

/** The package's own configuration looks for its fonts where its host has them; without any font a browser cannot draw a form control. */
function fontConfiguration(folder: string): string {
  const file = join(folder, "fonts-here.conf");
  if (!existsSync(file)) {
    const unfinished = `${file}.${process.pid}`;
    writeFileSync(
      unfinished,
      `<?xml version="1.0"?>\n<fontconfig>\n  <dir>${join(folder, "fonts")}</dir>\n  <cachedir>${join(folder, "fonts-cache")}</cachedir>\n</fontconfig>\n`,
    );
    renameSync(unfinished, file);
  }
  return file;
}

const UNPACK =
  "const { default: packed } = await import('@sparticuz/chromium'); await packed.executablePath();";

/**
 * The package unpacks into the temporary folder, its libraries only where it believes
 * itself on a certain host, and leaves its process changed: so a process of its own.
 */
async function unpackInto(folder: string): Promise<void> {
  await promisify(execFile)(process.execPath, ["--input-type=module", "--eval", UNPACK], {
    cwd: MODULES,
    env: { ...process.env, TMPDIR: folder, AWS_EXECUTION_ENV: "AWS_Lambda_nodejs22.x" },
  });
}
