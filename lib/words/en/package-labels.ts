/** What labels to stick, and the document that they come in, say. */
export const PACKAGE_LABELS = {
  code: (code: string) => `Price group ${code}`,
  foldOut: {
    inside: "Full safety information inside",
    front: "front page",
    page: (page: number) => `page ${page}`,
    back: "back page: stick down",
    away: "fold back",
    over: "fold over",
  },
  document: {
    title: (workshop: string) => `Labels: ${workshop}`,
    subject: (count: number) =>
      `${count} ${count === 1 ? "label" : "labels"}, to print at full size`,
    label: (name: string, size: string) => `${name}, ${size}`,
  },
} as const;
