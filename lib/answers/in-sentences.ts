import { figureText } from "../present/figure-text.ts";
import { standingView } from "../present/standing-view.ts";
import { upperFirst } from "../words/letter-case.ts";
import { isKnown } from "../quantities/figure.ts";
import type { Shortcode } from "./shortcode.ts";

/** A figure with its unit and how it is known. */
export const FIGURE: Shortcode = {
  name: "figure",
  place: "in a sentence",
  args: [{ name: "", kind: "figure" }],
  does: "the figure with its unit and the mark of its standing; one that is not stated is an error, since a sentence cannot do without it",
  render: (args, { context: { words } }) => {
    const { row, figure } = args.figure("").leaf;
    return isKnown(figure)
      ? { text: figureText(row, figure, words), standing: standingView(figure, words) }
      : undefined;
  },
};

/** A colour's name, leading to its sheet. */
export const COLOUR: Shortcode = {
  name: "colour",
  place: "in a sentence",
  args: [{ name: "", kind: "colour" }],
  does: "the colour's name as its record has it, leading to its sheet",
  render: (args, { place: { root }, begins }) => {
    const [worded] = args.colours("");
    if (worded === undefined) return undefined;
    return {
      text: begins ? upperFirst(worded.sheet.name) : worded.sheet.name,
      href: `${root}colours/${worded.sheet.slug}/`,
    };
  },
};

/** Another answer's question, leading there. */
export const ANSWER: Shortcode = {
  name: "answer",
  place: "in a sentence",
  args: [{ name: "", kind: "answer" }],
  does: "another answer's question, leading there",
  render: (args, { place: { root }, context: { records } }) => {
    const slug = args.text("") ?? "";
    const answer = records.answers.get(slug);
    return answer === undefined
      ? undefined
      : { text: answer.record.question, href: `${root}answers/${slug}/` };
  },
};
