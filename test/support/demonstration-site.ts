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
    /** The pages of the workshop's own that the same build writes, and where they are served. */
    readonly workshopDir: string;
    readonly workshopAddress: string;
  }
}

/** Build the demonstration once a run and serve it on this machine; the function given back stops serving. */
export default async function demonstrationSite(
  project: TestProject,
): Promise<() => Promise<void>> {
  const siteDir = join(project.getProvidedContext().scratch, "demonstration");
  const workshopDir = join(project.getProvidedContext().scratch, "demonstration-workshop");
  const { code, output, complaints } = await mullstone([
    "build",
    "--content",
    "content",
    "--output",
    siteDir,
    "--workshop",
    workshopDir,
  ]);
  if (code !== 0)
    throw new Error(`Unexpected exit ${code} of the demonstration's build\n${complaints}${output}`);
  const served = await servedFolder(siteDir);
  project.provide("siteDir", siteDir);
  project.provide("siteAddress", served.address);
  const workshop = await servedFolder(workshopDir);
  project.provide("workshopDir", workshopDir);
  project.provide("workshopAddress", workshop.address);
  return async () => {
    await Promise.all([served.close(), workshop.close()]);
  };
}
