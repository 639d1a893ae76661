import {
  packageLabelContent,
  type PackageLabelContent,
} from "../../lib/print/package-label-content.ts";
import { packageSizes, type PackageSize } from "../../lib/print/package-size.ts";
import type { PackageLabelRecord } from "../../lib/records/schema/package-label.ts";
import { CONTEXT } from "./demonstration-cards.ts";

/** A size of labels as a workshop's record states it. */
export function labelSize(label: Omit<PackageLabelRecord, "name">): PackageSize {
  const [size] = packageSizes({ name: "Test", labels: [{ name: "tried", ...label }] });
  if (size === undefined) throw new Error("Unexpected label without a size");
  return size;
}

/** @throws Error for a colour that the demonstration lacks. */
export function textsOf(slug: string): (typeof CONTEXT.sheets)[number] {
  const found = CONTEXT.sheets.find(({ sheet }) => sheet.slug === slug);
  if (found === undefined) throw new Error(`Unexpected range without ${slug}`);
  return found;
}

/** @throws Error for a colour that may have no label. */
export function labelContentOf(slug: string, size: PackageSize): PackageLabelContent {
  const content = packageLabelContent(textsOf(slug), size, CONTEXT);
  if ("refusal" in content) throw new Error(content.refusal);
  return content;
}
