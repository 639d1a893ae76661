import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { LICENCES_FILE, licencesText } from "./licences.ts";

/** `npm run licences` */
writeFileSync(join(import.meta.dirname, "../..", LICENCES_FILE), licencesText());
