import { fileURLToPath } from "node:url";

/** Where the package lies, with templates/ and assets/ in it. */
export const PACKAGE_ROOT = fileURLToPath(new URL("../../", import.meta.url));
