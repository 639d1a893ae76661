import { HtmlValidate } from "html-validate";

const validator = new HtmlValidate({
  extends: ["html-validate:standard", "html-validate:a11y", "html-validate:document"],
  // Our own styles and scripts, from the same folder: nothing to check them against.
  rules: { "require-sri": "off" },
});

/** What is wrong with a page by HTML's own rules and the static ones of accessibility, one line a fault. */
export async function htmlFaults(html: string): Promise<string[]> {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line }) => `${line} ${ruleId} ${message}`),
  );
}
