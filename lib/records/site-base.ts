import type { Records } from "./records.ts";
import type { WorkshopRecord } from "./schema/workshop.ts";

/** Folders that an address may go through: letters, digits and what else RFC 3986 leaves unreserved. */
const BASE = /^\/(?:[A-Za-z0-9._~-]+\/)*$/;

/**
 * The folder of its host that a site stands in, as `--base` gives it: `/`, or `/colours/`.
 * @returns undefined for what is no such folder
 */
export function writtenBase(text: string): string | undefined {
  const base = `/${text}/`.replaceAll(/\/+/g, "/");
  return BASE.test(base) && !/\/\.{1,2}\//.test(base) ? base : undefined;
}

/** The folder that the workshop's own address has its site in; `/` where it gives none. */
export function siteBase({ siteAddress }: Pick<WorkshopRecord, "siteAddress">): string {
  return siteAddress === undefined ? "/" : new URL(`${siteAddress}/`).pathname.replace(/\/+$/, "/");
}

/** The same records for a site that stands in another folder of its host than the workshop's address says. */
export function recordsBelow(records: Records, base: string | undefined): Records {
  const { siteAddress } = records.workshop;
  if (base === undefined || base === records.siteBase) return records;
  return {
    ...records,
    siteBase: base,
    workshop: {
      ...records.workshop,
      ...(siteAddress !== undefined && { siteAddress: new URL(base, siteAddress).href }),
    },
  };
}
