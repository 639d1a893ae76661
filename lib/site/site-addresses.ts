/** Addresses are for good: a page that was published once is there, or another says what took its place. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestHint } from "../diagnostics/nearest-word.ts";
import { formerPages } from "../pages/former-page.ts";
import { given } from "../quantities/given.ts";
import { MANIFESTS_FOLDER } from "../records/content-tree.ts";
import { errorAt } from "../records/fault.ts";
import type { Records } from "../records/records.ts";
import { LANGUAGES } from "../quantities/languages.ts";
import { earlierState } from "./earlier-manifest.ts";

/** Every page of a site, in the folders of all its languages; a former page that is there today comes twice. */
export type PagePaths = readonly string[];

/** Manifests that lie in the folder of that name beside the records, in order of name. */
export function keptManifests(contentDir: string): string[] {
  const folder = join(contentDir, MANIFESTS_FOLDER);
  try {
    return readdirSync(folder)
      .filter((name) => name.endsWith(".json"))
      .sort()
      .map((name) => join(folder, name));
  } catch {
    return [];
  }
}

/**
 * Pages that were published and would lead nowhere, and former pages that say what is not so.
 * @param manifests files of what was published
 * @throws OutputFault for a file that is no manifest of ours
 */
export function addressFaults(
  records: Records,
  pages: PagePaths,
  manifests: readonly string[],
): Diagnostic[] {
  return [...formerFaults(records, pages), ...lostFaults(records, pages, manifests)];
}

function formerFaults({ workshop, workshopPlace }: Records, pages: PagePaths): Diagnostic[] {
  const former = new Set(formerPages(workshop).map(({ path }) => path));
  const today = pages.filter((path) => !former.has(path)).map(addressOf);
  const fault = (
    key: "address" | "replacedBy",
    i: number,
    fields: Pick<Diagnostic, "message" | "actual" | "expected" | "hint">,
  ): Diagnostic => errorAt(workshopPlace(["former", i, key]), "site/former-page", fields);
  return (workshop.former ?? []).flatMap(({ address, replacedBy }, i): Diagnostic[] => {
    return given([
      pages.filter((path) => path === `${address}index.html`).length > 1 &&
        fault("address", i, {
          message: `The page ${address} is there today, and can't be a former one`,
          actual: address,
          expected: "an address that the site no longer has",
        }),
      replacedBy !== undefined &&
        !today.includes(replacedBy) &&
        fault("replacedBy", i, {
          message: `There is no page ${replacedBy} to take the place of ${address}`,
          actual: replacedBy,
          expected: "the address of a page of today",
          hint: nearestHint(replacedBy, today),
        }),
    ]);
  });
}

/**
 * Addresses of earlier manifests that no page of today has, each told once, where it can be mended: a
 * colour's sheet for all its pages, one language for all.
 */
function lostFaults(
  { workshopPlace }: Records,
  pages: PagePaths,
  manifests: readonly string[],
): Diagnostic[] {
  const there = new Set(pages);
  const lost = manifests
    .flatMap((file) => earlierState(file).files)
    .filter((path) => path.endsWith(".html") && !there.has(path));
  const addresses = new Set(lost.map((path) => shortAddress(path, there)));
  return [...addresses].sort().map((address) =>
    errorAt(workshopPlace(["former"]), "site/lost-address", {
      message: `The page ${address} was published and would be gone, and a printed QR code may lead there: name it under former in workshop.yaml, with what took its place, as in { address: ${address}, name: "Name", replacedBy: colours/ }`,
      actual: "no such page",
      expected: `former: [{ address: ${address}, name, replacedBy }]`,
    }),
  );
}

const OF_LANGUAGE = new RegExp(`^(?:${LANGUAGES.join("|")})/`);

function shortAddress(path: string, there: ReadonlySet<string>): string {
  const plain = path.replace(OF_LANGUAGE, "");
  // A whole language that is gone is no fault of its pages.
  if (plain !== path && there.has(plain)) return OF_LANGUAGE.exec(path)?.[0] ?? path;
  return addressOf(plain).replace(/^(colours\/[^/]+\/)(?:bench|evidence)\/$/, "$1");
}

function addressOf(path: string): string {
  return path.replace(/index\.html$/, "");
}
