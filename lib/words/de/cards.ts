import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";

/** What a shelf card says beside what its sheet says, and the page of all cards. */
export const CARDS: AnyWords<PageWords["cards"]> = {
  /** Under a tint, where its neighbours are whites as well. */
  white: (name: string) => name.replace(/\s+white$/i, ""),
  tint: (white: string, level: string) => `${white}, ${level}`,
  masstone: "Vollton",
  noColour: "noch nicht gemessen",
  chip: "gemalter Aufstrich",
  noTint: "Was sie in einem Weiß tut: keine Angabe.",
  extender: "Ein Streckmedium.",
  isWhite: (count: number) =>
    count === 1
      ? "Ein Weiß: eine Farbe des Sortiments wurde darin aufgehellt."
      : `Ein Weiß: ${count} Farben des Sortiments wurden darin aufgehellt.`,
  overleaf: "Hinweise umseitig.",
  ragLead: "Ölgetränkte Lappen können sich selbst entzünden: siehe Rückseite.",
  ragShort: "Ölige Lappen: selbstentzündlich.",
  basisWorkedOut: (frame: string, edition: string) => `Etikett nach ${frame}: ${edition}.`,
  drawdown: "Der Druck kommt der Farbe nur nahe: der gemalte Aufstrich gilt.",
  approximateNote: "Diese wurde unter anderem Licht gemessen und angepasst.",
  lot: (number: string) => `Charge\u00a0${number}`,
  revision: (revision: string) => `Karte\u00a0${revision}`,
  address: (address: string) => `QR-Code der Adresse des Blatts, ${address}`,
  continued: (name: string) => `${name}, Fortsetzung`,
  document: {
    title: (workshop: string, size: string) => `${workshop}: Regalkarten, ${size}`,
    subject: (count: number) => `${count} Regalkarte${count === 1 ? "" : "n"}`,
    card: (name: string) => `Karte: ${name}`,
  },
  page: {
    heading: "Regalkarten",
    lead: (size: string, width: string, height: string) =>
      `Jede Karte, wie sie in der Größe ${size} gedruckt wird, ${width} \u00d7 ${height} mm: vorn und hinten. Ein Bildschirm zeigt eine Farbe nicht, wie sie ist; ein Drucker auch nicht ganz.`,
    sizes: "Größen",
    front: "vorn",
    back: "hinten",
    leaf: (leaf: number, side: string) => `Blatt ${leaf}, ${side}`,
    withoutHeading: "Ohne Karte",
    without: (markets: readonly string[]) =>
      `darf nur auf einer Rechtsgrundlage oder gar nicht verkauft werden (${markets.join(", ")}): keine Karte, kein Preis`,
    lacks: (lacks: readonly ("colour" | "price")[]) =>
      lacks
        .map((lack) => (lack === "colour" ? "noch keine Farbe gemessen" : "kein Preis"))
        .join(", "),
    notClassified:
      "ist noch nicht eingestuft, weil ein Sicherheitsdatenblatt fehlt, und daher nicht im Verkauf: keine Karte, kein Preis",
    pdf: (size: string) => `diese Karten zum Drucken und Schneiden, ${size}`,
    link: "Regalkarten, jede so, wie sie gedruckt wird",
  },
  /** The list of reprints. */
  reprint: {
    fresh: "eine neue Karte",
    gone: "keine Karte mehr: aus dem Regal nehmen",
    changed: (what: string, before: string, now: string) =>
      `${what}: „${before}“ ist jetzt „${now}“`,
    added: (what: string, now: string) => `${what}: jetzt „${now}“`,
    removed: (what: string, before: string) => `${what}: nicht mehr „${before}“`,
  },
  /** Names of what a card states, as the list of reprints has them. */
  states: {
    name: "Name",
    madeOf: "Besteht aus",
    masstone: "Vollton",
    tints: "Aufhellungen",
    sentence: "In Weiß",
    lightfastness: "Lichtechtheit",
    opacity: "Deckvermögen",
    drying: "Trocknet",
    strength: "Farbstärke",
    signalWord: "Signalwort",
    pictograms: "Piktogramme",
    statements: "Gefahrenhinweise",
    precautions: "Sicherheitshinweise",
    unknown: "Inhalt und Gefahrendaten",
    rags: "Lappen",
    sizes: "Größen und Preise",
    poisonCentre: "Giftinformationszentrum",
    basis: "Grundlage des Etiketts",
    address: "Adresse",
    lot: "Charge",
    imprint: "Impressum",
  },
};
