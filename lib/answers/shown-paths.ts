import { pathParts } from "../claims/figure-index.ts";
import type { Answer } from "../records/records.ts";
import { listed, shortcodeCall, shortcodeEnd, type ShortcodeCall } from "./shortcode-syntax.ts";
import { given } from "../quantities/given.ts";

/** Paths of figures, and of the parts that pictures are drawn from, that an answer shows beside its claims: in its text, its summary and its reply. */
export function shownPaths(
  { record, body }: Answer,
  colours: readonly string[],
): readonly string[] {
  const texts = [body, record.summary, record.reply?.text ?? ""];
  const reply = (record.reply?.colours ?? colours).flatMap((slug) =>
    (record.reply?.figures ?? []).map((figure) => `${slug}.${figure}`),
  );
  return [...new Set([...texts.flatMap((text) => [...calls(text)]).flatMap(pathsOf), ...reply])];
}

function* calls(text: string): Generator<ShortcodeCall> {
  for (let at = text.indexOf("{%"); at >= 0; at = text.indexOf("{%", at + 2)) {
    const end = shortcodeEnd(text, at);
    const call = end < 0 ? undefined : shortcodeCall(text.slice(at, end));
    if (call !== undefined && "name" in call) yield call;
  }
}

/** Of a figure its path, of a table the figures of its colours, of a picture its masstone and its let-downs. */
function pathsOf({ name, args }: ShortcodeCall): string[] {
  if (name === "figure")
    return [args.get("") ?? ""].filter((path) => pathParts(path).figure !== "");
  const white = args.get("white");
  const parts = args.has("figures")
    ? listed(args.get("figures") ?? "")
    : given(["notations", white !== undefined && `tints.${white}`]);
  return [...listed(args.get("colour") ?? ""), ...listed(args.get("colours") ?? "")].flatMap(
    (slug) => parts.map((part) => `${slug}.${part}`),
  );
}
