import { join } from "node:path";
import nunjucks from "nunjucks";
import { PACKAGE_ROOT } from "./package-root.ts";

/**
 * Nunjucks over templates/: a missing figure stops the build, a record's text is escaped.
 */
export function templateEnvironment(): nunjucks.Environment {
  const loader = new nunjucks.FileSystemLoader(join(PACKAGE_ROOT, "templates"));
  return new nunjucks.Environment(loader, {
    autoescape: true,
    throwOnUndefined: true,
    trimBlocks: true,
    lstripBlocks: true,
  });
}
