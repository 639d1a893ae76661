/**
 * A reply put together on the page: which question, colours and figures, and a
 * button that copies it. The page carries finished lines; the text is made by the
 * same module that made the stock reply.
 */
import { replyText, type ReplyMaterial } from "../../lib/answers/reply-text.ts";

for (const root of document.querySelectorAll<HTMLElement>("[data-reply]")) compose(root);

function compose(root: HTMLElement): void {
  const material = JSON.parse(root.dataset["reply"] ?? "") as ReplyMaterial;
  const question = root.querySelector<HTMLInputElement>("[data-question]");
  const text = root.querySelector<HTMLTextAreaElement>("[data-text]");
  const fields = root.querySelector<HTMLElement>("[data-fields]");
  const row = root.querySelector<HTMLElement>("[data-copy-row]");
  const status = root.querySelector<HTMLElement>("[data-status]");
  if (question === null || text === null || fields === null || row === null || status === null)
    return;

  const chosen = (kind: string): string[] =>
    [...root.querySelectorAll<HTMLInputElement>(`[data-${kind}]:checked`)].map(
      ({ value }) => value,
    );
  const hasChoice = root.querySelector("[data-colour]") !== null;
  fields.addEventListener("input", () => {
    const colours = hasChoice ? chosen("colour") : material.colours.map(({ slug }) => slug);
    text.value = replyText(material, {
      question: question.value,
      colours,
      figures: chosen("figure"),
    });
    status.textContent = "";
  });
  row.querySelector("[data-copy]")?.addEventListener("click", () => {
    void copied(text).then((done) => {
      status.textContent = (done ? root.dataset["copied"] : root.dataset["notCopied"]) ?? "";
    });
  });
  fields.hidden = false;
  row.hidden = false;
}

/** To the clipboard; where a browser refuses, the text is selected, to be copied by hand. */
async function copied(text: HTMLTextAreaElement): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text.value);
    return true;
  } catch {
    text.focus();
    text.select();
    return false;
  }
}
