import { join } from "node:path";
import nunjucks from "nunjucks";
import { PACKAGE_ROOT } from "./package-root.ts";
import { typeset } from "./typeset.ts";

/**
 * Nunjucks over templates/: a missing figure stops the build, a record's text is escaped.
 */
export function templateEnvironment(): nunjucks.Environment {
  const loader = new nunjucks.FileSystemLoader(join(PACKAGE_ROOT, "templates"));
  const environment = new nunjucks.Environment(loader, {
    autoescape: true,
    throwOnUndefined: true,
    trimBlocks: true,
    lstripBlocks: true,
  });
  return environment.addFilter(
    "typeset",
    (page: unknown) => new nunjucks.runtime.SafeString(typeset(String(page))),
  );
}
