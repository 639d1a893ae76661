import type { Block } from "../blocks/block.ts";
import type { WorkshopPageView } from "../blocks/page-kinds.ts";
import { section, statement, tableOf } from "../blocks/section-blocks.ts";
import type { PageContext } from "../pages/page-context.ts";
import type { PackageSize } from "../print/package-size.ts";
import type { RangeLabels } from "../print/range-labels.ts";
import { workshopPage } from "./workshop-frame.ts";
import { given } from "../quantities/given.ts";

export const LABELS_PDF = "labels/labels.pdf";

/** What is said of the labels of the whole range, one of each, and of their PDF where one was drawn. */
export interface LabelMatter extends Pick<RangeLabels, "remarks" | "refusals"> {
  /** Of each size, whose colours have one. */
  readonly runs: readonly {
    readonly size: Pick<PackageSize, "name" | "widthMm" | "heightMm">;
    readonly colours: readonly string[];
  }[];
  readonly pdf?: { readonly pages: number };
}

export function labelMatter({ runs, remarks, refusals }: RangeLabels): LabelMatter {
  return {
    remarks,
    refusals,
    runs: runs.map(({ size: { name, widthMm, heightMm }, labels }) => ({
      size: { name, widthMm, heightMm },
      colours: labels.map((label) => label.name),
    })),
  };
}

/** Labels to stick: the PDF, what is on it, and what is to be known of it or stands in the way of more. */
export function labelsPage(context: PageContext, matter: LabelMatter): WorkshopPageView {
  const { words } = context;
  const { labels: text } = words.pages.lots;
  const sections = [
    ...section("print", text.sections.print, printBlocks(context, matter)),
    ...section("refused", text.sections.refused, listed(matter.refusals, text.list)),
    ...section("remarks", text.sections.remarks, listed(matter.remarks, text.list)),
  ];
  return workshopPage(context, {
    heading: text.heading,
    description: text.description,
    lead: [text.lead],
    sections,
  });
}

function printBlocks({ words, records }: PageContext, { runs, pdf }: LabelMatter): Block[] {
  const { labels: text } = words.pages.lots;
  if (records.workshop.labels === undefined) return [statement(text.none)];
  return given([
    ...(runs.length === 0
      ? [statement(text.nothing)]
      : [
          tableOf({
            caption: text.caption,
            columns: [text.columns.size, text.columns.measures, text.columns.colours],
            rows: runs.map(({ size, colours }) => [
              size.name,
              text.measures(size.widthMm, size.heightMm),
              words.listed(colours),
            ]),
          }),
        ]),
    pdf !== undefined && {
      kind: "links" as const,
      links: [{ text: text.pdf(pdf.pages), href: LABELS_PDF.replace("labels/", "") }],
    },
    statement(text.command.text, "note", { code: text.command.code }),
  ]);
}

function listed(lines: readonly string[], heading: string): Block[] {
  return lines.length === 0
    ? []
    : [{ kind: "list", list: { heading, items: lines.map((text) => ({ text: `${text}.` })) } }];
}
