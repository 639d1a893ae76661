import { OutputFault } from "./output-fault.ts";
import { buildFolder, type BuildFolder } from "./output-folder.ts";
import { isWithin, outputPlace } from "./output-place.ts";
import { NO_SPARE, type SpareOutput } from "./spare-output.ts";
import type { OutputKind } from "./output-manifest.ts";

/** The two outputs of one build, each locked, written beside its earlier one and swapped by itself. */
export interface BuildFolders extends BuildFolder {
  /** Write the workshop's own pages into this one. */
  readonly workshopDir: string;
  /** Where the earlier of these lies, if there is one: links followed. */
  readonly earlierWorkshopDir: string;
}

/**
 * What is kept in the workshop must never lie where the site is published from, nor the other way about.
 * @throws OutputFault when one folder is the other, or lies in it.
 */
export function refuseNested(outputDir: string, workshopDir: string, contentDir: string): void {
  const [out, workshop] = [outputDir, workshopDir].map((dir) => outputPlace(dir, contentDir));
  if (out === undefined || workshop === undefined) return;
  if (isWithin(workshop, out) || isWithin(out, workshop))
    throw new OutputFault(
      `--workshop can't be ${workshopDir}: it is ${out === workshop ? "the output folder itself" : "in one folder with the output"}, and the workshop's pages must not be published with it`,
    );
}

/**
 * Claim both folders of a build. The site is swapped first: between the two swaps, as after a kill there,
 * each output is whole, the workshop's one build older.
 * @param spare what the build of each begins with, who has to clear away all that it does not write.
 * @throws OutputFault when either is not ours, in use, or can't be written.
 */
export function buildFolders(
  outputDir: string,
  workshopDir: string,
  contentDir: string,
  spare: (kind: OutputKind) => SpareOutput = () => NO_SPARE,
): BuildFolders {
  const site = buildFolder(outputDir, contentDir, "site", spare("site"));
  let workshop: BuildFolder;
  try {
    workshop = buildFolder(workshopDir, contentDir, "workshop", spare("workshop"));
  } catch (error) {
    site.discard();
    throw error;
  }
  return {
    dir: site.dir,
    earlierDir: site.earlierDir,
    workshopDir: workshop.dir,
    earlierWorkshopDir: workshop.earlierDir,
    publish: () => {
      const left = [site.publish(), publishedAfter(workshop, outputDir)].filter(
        (sentence) => sentence !== undefined,
      );
      return left.length === 0 ? undefined : left.join("\n");
    },
    discard: () => {
      workshop.discard();
      site.discard();
    },
  };
}

/** What goes wrong here leaves the site new and the workshop's pages as they were. */
function publishedAfter(workshop: BuildFolder, outputDir: string): string | undefined {
  try {
    return workshop.publish();
  } catch (error) {
    throw new OutputFault(
      `The site in ${outputDir} is new, and the workshop's pages are not: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}
