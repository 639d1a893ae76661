import { given } from "../quantities/given.ts";
/** Everything that a reply can be put together from: finished text alone, so that a browser can do it. */
export interface ReplyMaterial {
  readonly thanks: string;
  /** Before the question: "You asked:". */
  readonly asked: string;
  readonly short: string;
  /** In the order in which they are offered. */
  readonly colours: readonly ReplyColour[];
  /** Where it stands in full; absent when the site's address is not known. */
  readonly more?: string;
  /** Where a label is quoted: that it prevails. */
  readonly cautionLine: string;
  /** "With kind regards," and who sends it. */
  readonly closing: readonly string[];
}

export interface ReplyColour {
  readonly slug: string;
  readonly name: string;
  /** A finished line for each figure, by its path. */
  readonly lines: Readonly<Record<string, string>>;
  /** Its label elements in full, where anything is classified or unknown. */
  readonly caution?: string;
}

interface ReplyChoice {
  readonly question: string;
  readonly colours: readonly string[];
  /** Paths, in the order in which they are to stand. */
  readonly figures: readonly string[];
}

/** A reply as plain text: thanks, the question, the short answer, figures by colour, cautions, where to read on. */
export function replyText(
  material: ReplyMaterial,
  { question, colours, figures }: ReplyChoice,
): string {
  const chosen = material.colours.filter(({ slug }) => colours.includes(slug));
  const lists = chosen.flatMap(({ name, lines }) => {
    const own = figures.flatMap((path) => lines[path] ?? []);
    return own.length === 0 ? [] : [[name, ...own.map((line) => `- ${line}`)].join("\n")];
  });
  const cautions = chosen.flatMap(({ caution }) => caution ?? []);
  return given([
    material.thanks,
    question.trim() !== "" && `${material.asked} ${question.trim()}`,
    material.short,
    ...lists,
    cautions.length > 0 && [...cautions, material.cautionLine].join("\n"),
    material.more,
    material.closing.join("\n"),
  ]).join("\n\n");
}
