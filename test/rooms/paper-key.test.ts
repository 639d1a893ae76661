import { expect, test } from "vitest";
import { DRAWING_ROOMS } from "../../lib/site/paper-keys.ts";
import { libModules } from "./lib-modules.ts";

/** What draws a PDF from what is finished: everything else reaches paper through the views, which are in the key. */
const DRAWING = ["sheet", "range", "cards", "former"].map((kind) => `lib/print/${kind}-pdf.ts`);

test("the key of a kept PDF covers every module that draws it", () => {
  const modules = new Map(libModules().map((module) => [module.file, module]));
  const reached = new Set<string>();
  const visit = (file: string): void => {
    if (reached.has(file)) return;
    reached.add(file);
    const module = modules.get(file);
    if (module === undefined) throw new Error(`Unexpected import of ${file}`);
    for (const { target, typeOnly } of module.imports)
      if (target !== undefined && !typeOnly) visit(target.file);
  };
  DRAWING.forEach(visit);
  expect(reached.size).toBeGreaterThan(15);
  const rooms: readonly string[] = DRAWING_ROOMS;
  expect(
    [...reached].filter((file) => !rooms.some((room) => file.startsWith(`lib/${room}/`))),
  ).toEqual([]);
});
