import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { mullstone } from "./mullstone.ts";
import { servedFolder } from "./served-folder.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** The demonstration workshop's site as `build` writes it; tests only read it. */
    readonly siteDir: string;
    /** The same, served: no slash at its end. */
    readonly siteAddress: string;
  }
}

/** Build the demonstration once a run and serve it on this machine; the function given back stops serving. */
export default async function demonstrationSite(
  project: TestProject,
): Promise<() => Promise<void>> {
  const siteDir = join(project.getProvidedContext().scratch, "demonstration");
  const { code, output, complaints } = await mullstone([
    "build",
    "--content",
    "content",
    "--output",
    siteDir,
  ]);
  if (code !== 0)
    throw new Error(`Unexpected exit ${code} of the demonstration's build\n${complaints}${output}`);
  const served = await servedFolder(siteDir);
  project.provide("siteDir", siteDir);
  project.provide("siteAddress", served.address);
  return served.close;
}
