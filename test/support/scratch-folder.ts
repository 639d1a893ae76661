import { join } from "node:path";
import type { TestProject } from "vitest/node";
import { runFolder } from "./run-folder.ts";

declare module "vitest" {
  export interface ProvidedContext {
    /** One folder for everything that the tests of a project write; removed at the end. */
    readonly scratch: string;
  }
}

/** Make the scratch folder before the first test; the function given back removes it after the last. */
export default function scratchFolder(project: TestProject): () => void {
  const { folder, remove } = runFolder("test");
  project.provide("scratch", folder);
  // What a command keeps for its user is kept there too.
  process.env["XDG_STATE_HOME"] = join(folder, "state");
  return remove;
}
