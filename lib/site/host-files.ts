/** What a host and its visitors' programs look for in fixed places, and no page leads to. */
import { given } from "../quantities/given.ts";
import type { Records } from "../records/records.ts";
import type { DataFile } from "./site.ts";

const SITEMAP = "sitemap.xml";
/** A year, the longest that is taken at its word (RFC 9111, 5.2.2.1 sets no limit; practice does). */
export const LONG_LIVED = "public, max-age=31536000, immutable";

/** Whether a file's name changes with what it holds. */
export function isLongLived(path: string): boolean {
  return /^assets\/.*\.[0-9a-f]{10}\.\w+$/.test(path);
}

/**
 * The list of what a browser may keep for good, in the form that many static hosts read; and, for a site at the root of its
 * host, where alone they are looked for, robots.txt (RFC 9309, 2.3) and security.txt (RFC 9116, 3).
 */
export function hostFiles({ workshop, siteBase }: Records): DataFile[] {
  const { siteAddress, security } = workshop;
  return given([
    { path: "_headers", text: `${siteBase}assets/*\n  Cache-Control: ${LONG_LIVED}\n` },
    siteBase === "/" &&
      siteAddress !== undefined && {
        path: "robots.txt",
        text: `User-agent: *\nAllow: /\nSitemap: ${new URL(SITEMAP, `${siteAddress}/`).href}\n`,
      },
    siteBase === "/" &&
      security !== undefined && { path: ".well-known/security.txt", text: securityText(security) },
  ]);
}

function securityText({
  contact,
  expires,
  policy,
}: NonNullable<Records["workshop"]["security"]>): string {
  return [
    `Contact: ${contact}`,
    `Expires: ${expires}T00:00:00Z`,
    ...(policy === undefined ? [] : [`Policy: ${policy}`]),
    "",
  ].join("\n");
}
