import type { AnyWords } from "../any-words.ts";
import type { PageWords } from "../en/pages.ts";

/** How to read a label and a sheet. Where a line needs a figure the page takes it from a sheet. */
export const LABEL_PAGE: AnyWords<PageWords["labelPage"]> = {
  heading: "Ein Etikett lesen",
  lead: "Auf einer Tube ist Platz für wenige Zeilen. Was jede davon sagt, was sie auslässt, und was ein Blatt hinzufügt.",
  columns: { line: "Zeile", says: "Was sie sagt", here: (name: string) => `Auf ${name}` },
  label: {
    heading: "Die Zeilen eines Etiketts",
    caption: "Zeile für Zeile",
    lines: {
      name: [
        "Name",
        "Der des Herstellers. Er kann historisch oder erfunden sein und sagt nicht, welches Pigment darin ist; ein Name kann für mehrere stehen.",
      ],
      pigment: [
        "Pigment",
        "In Worten und mit seinem Colour-Index-Namen: P für Pigment oder N für ein natürliches, Buchstaben für den Buntton, eine Nummer. Er nennt eine Art Pigment; Hersteller, Ton und Güte unterscheiden sich noch.",
      ],
      vehicle: [
        "Bindemittel",
        "Das Öl, das bindet, und was zugesetzt wurde. Es bestimmt, wie der Film vergilbt, und bestimmt mit, wie schnell er trocknet.",
      ],
      lightfastness: [
        "Lichtechtheit",
        "Eine Kategorie von I bis V nur, wo die Belichtungen einer Norm gemacht wurden, oder als Angabe eines anderen; sonst steht da, was stattdessen getan wurde, oder dass nichts getan wurde.",
      ],
      hazards: [
        "Gefahren",
        "Signalwort, Piktogramme und Hinweise in festen Worten. Sie gelten der Farbe in der Tube; der Staub beim Schleifen und das trockene Pigment können schlimmer sein.",
      ],
      contents: [
        "Inhalt",
        "Milliliter, denn Farbe wird nach Volumen verbraucht. Dieselbe Tube wiegt mit einem dichten Pigment weit mehr.",
      ],
      lot: [
        "Charge",
        "Welcher Ansatz es war: das, was Sie nennen, wenn etwas nicht stimmt. Chargen einer Farbe unterscheiden sich ein wenig.",
      ],
    },
    nothing: "kein Warnhinweis: die Papiere der Lieferanten verlangen keinen",
    lot: "von Hand eingetragen",
    holds: (ml: string, grams: string) => `${ml}, das sind ${grams} Farbe`,
    noSize: "keine Größe aufgezeichnet",
    unsaid:
      "Ein Etikett hat keinen Platz dafür, was die Farbe in einem Weiß tut, wie viel Öl darin ist, wann sie trocken ist und woher das alles bekannt ist. Dafür ist ihr Blatt da.",
  },
  studio: {
    heading: "Was für jede Farbe gilt",
    text: "Diese Vorsichtsregeln gelten in jedem Atelier und jeder Werkstatt, gleich welche Farbe auf dem Tisch liegt, und stehen daher hier ein einziges Mal. Was einer Farbe eigen ist, steht auf ihrem Blatt, zuerst; Etikett und Sicherheitsdatenblatt gehen vor, und örtliche Vorschriften und zugelassene Fachleute kommen vor allem, was hier gesagt ist.",
    caption: "In jedem Atelier",
    dust: "Ein trockenes Pigment staubt: behandeln Sie es als stark staubend, sofern seine Schüttdichte nichts anderes sagt.",
    columns: { operation: "Bei", caution: "Was zu tun und zu lassen ist", reason: "Warum" },
  },
  pigments: {
    heading: "Ein Pigment oder mehrere",
    caption: "Farben aus mehr als einem Pigment",
    text: (single: number, all: number) =>
      `Von den ${all} Farben hier ${single === 1 ? "ist" : "sind"} ${single} aus einem einzigen Pigment gemacht. Sehen Sie nach, wie viele Colour-Index-Namen ein Etikett nennt: ein Name ist eine Art Pigment, die rein mischt und sich in jeder Schicht gleich verhält. Mehrere Namen sind eine Mischung, die sich auch auf der Palette machen ließe; sie wird verkauft, weil sie handlich ist oder ein Pigment ersetzt, das teuer, gesundheitsschädlich oder nicht lichtecht ist.`,
    columns: { colour: "Farbe", pigments: "Pigmente", weakest: "Am wenigsten lichtecht" },
    alike: "gleich, soweit bekannt",
    unknown: "nicht bekannt",
    none: "Keine Farbe hier ist eine Mischung.",
  },
  names: {
    heading: "Ein Name, mehrere Farben",
    caption: "Colour-Index-Namen, die hier mehr als ein Pigment trägt",
    text: "Ein Colour-Index-Name umfasst alles von einem Aufbau: rohe und gebrannte Erden teilen sich einen Namen, ebenso eine grobe und eine feine Sorte. Auch folgt ein Name nicht aus einer CAS-Nummer: Lampenruß (PBk 6) und aus Gas gewonnener Ruß (PBk 7) haben eine gemeinsame Nummer und unterscheiden sich im Korn, im Öl und in dem, was sie in einem Weiß tun.",
    columns: { index: "Colour-Index-Name", pigments: "Pigmente", colours: "Farben" },
  },
  drift: {
    heading: "Warum sich manches gemischte Schwarz verschiebt",
    caption: "Gemischte Schwarz- und Grautöne hier",
    text: "In einem Schwarz aus einem einzigen Pigment kann sich nur eines ändern. Nimmt ihm das Licht etwas, so wird es heller und behält seinen Buntton. Ein gemischtes Schwarz ist ein Gleichgewicht: Pigmente von ungleichem Buntton sind so gewogen, dass sie zusammen neutral wirken. Verliert eines an Stärke, kippt das Gleichgewicht, und das Schwarz verschiebt sich zu denen hin, die bleiben: nach Braun, wo ein Blau oder Grün nachgibt, nach Grün oder Blau, wo ein Rot nachgibt. Was im Licht zuerst verblasst, was Lauge, Säure oder Hitze erreichen, und was in einem Weiß nur schwächer wirkt als in einem anderen: jedes davon kann es kippen. In einer Mischung entscheidet daher das am wenigsten lichtechte Pigment, und eine Mischung aus Pigmenten, die im Licht gleich sind, hat wenig Grund, sich zu verschieben.",
    driftColumn: "Wenn ein Pigment 30\u00a0% verliert",
    notReckoned: "hier nicht gerechnet",
    none: "Kein Schwarz oder Grau hier ist gemischt.",
  },
  sheet: {
    heading: "Die Zeilen eines Blatts",
    caption: "Die Angaben des ersten Bildschirms",
    facts: {
      lasts:
        "Wie sie im Licht hielt oder voraussichtlich hält. Das Kleingedruckte sagt, welches: nach der Norm belichtet, hier belichtet, von jemandem angegeben, oder nach den Pigmenten zu erwarten und nicht geprüft.",
      hides:
        "Wie gut ein Film Schwarz und Weiß gleich deckt, und wie dick ein trockener Film dafür sein muss.",
      dries:
        "Eine Klasse nach der Mitte der Tage bis grifftrocken, für einen Film der Dicke und einen Raum der Wärme, die das Blatt nennt. Grifftrocken ist nicht durchgetrocknet.",
      strength:
        "Wie weit ein wenig davon in einem Weiß reicht, Tube zu Tube, neben der Farbe, mit der die Werkstatt vergleicht.",
      oil: "Gramm Öl in der Farbe auf 100 g Pigment. Viel ist kein Fehler: ein leichtes, feines Pigment braucht es. Nach Volumen liegen Farben näher beieinander.",
      safety:
        "Das Signalwort des Etiketts, oder dass keines nötig ist. Wo niemand ein Pigment eingestuft hat, sagt es das Blatt: als gefährlich behandeln.",
    },
    whitens:
      "Von einem Weiß: wie viel davon einen Teil der Farbe, mit der die Werkstatt vergleicht, auf einen mittleren Ton bringt. Je weniger, desto stärker das Weiß.",
    middleTone:
      "Wie viel Weiß einen Teil davon auf einen mittleren Ton bringt. Eine dunkle Farbe braucht viel Weiß und ist darum nicht die stärkere.",
    text: "Neben jedem Wert steht, woher er bekannt ist. Ein Wert, den niemand kennt, ist als „keine Angabe“ vermerkt, mit dem, was dazu nötig wäre; er ist nie eine Null oder geraten.",
  },
};
