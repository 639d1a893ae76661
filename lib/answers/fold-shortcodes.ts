import type { Shortcode } from "./shortcode.ts";

/** Begins what a reader opens who wants to know more. */
export const FOLD: Shortcode = {
  name: "fold",
  place: "on a line of its own",
  args: [{ name: "", kind: "text" }],
  does: "folds away what follows, to `endfold`, under a handle with these words",
  render: (args) => ({ fold: args.text("") ?? "" }),
};

export const END_FOLD: Shortcode = {
  name: "endfold",
  place: "on a line of its own",
  args: [],
  does: "ends a fold",
  render: () => ({ endsFold: true }),
};
