import { alike, type Texts } from "../texts.ts";

/** The page About. */
export const ABOUT = {
  heading: { en: "About", de: "Über uns", fr: "À propos", es: "Acerca de" },
  lead: (workshop: string) => ({
    en: `What ${workshop} is, and what these sheets are.`,
    de: `Was ${workshop} ist und was diese Blätter sind.`,
    fr: `Ce qu’est ${workshop}, et ce que sont ces fiches.`,
    es: `Qué es ${workshop}, y qué son estas fichas.`,
  }),
  revision: (revision: string) => ({
    en: `All sheets together: revision ${revision}.`,
    de: `Alle Blätter zusammen: Fassung ${revision}.`,
    fr: `Toutes les fiches ensemble\u202f: révision ${revision}.`,
    es: `Todas las fichas juntas: revisión ${revision}.`,
  }),
  sections: [
    [
      alike("sheets"),
      {
        en: "What a sheet is",
        de: "Was ein Blatt ist",
        fr: "Ce qu’est une fiche",
        es: "Qué es una ficha",
      },
      {
        en: "A sheet is worked out from our records: what went into the batch, rub-outs, drawdowns read with an instrument or matched by eye, drying trials, exposures, suppliers\u2019 papers. Each figure says how it is known. Where we do not know, it says what it would take.",
        de: "Ein Blatt wird aus unseren Aufzeichnungen errechnet: was in den Ansatz ging, Ölzahlen, Aufstriche (mit einem Gerät gemessen oder nach Augenmaß verglichen), Trockenversuche, Belichtungen, Unterlagen der Lieferanten. Bei jedem Wert steht, woher er bekannt ist. Wo wir etwas nicht wissen, steht, was dazu nötig wäre.",
        fr: "Une fiche est calculée d’après nos relevés\u202f: ce qui est entré dans la fabrication, prises d’huile, applications mesurées à l’instrument ou comparées à l’œil, essais de séchage, expositions, documents des fournisseurs. Chaque chiffre dit d’où on le sait. Là où nous ne le savons pas, la fiche dit ce qu’il faudrait pour le savoir.",
        es: "Una ficha se calcula a partir de nuestros registros: lo que entró en la fabricación, absorciones de aceite, aplicaciones medidas con un instrumento o igualadas a ojo, ensayos de secado, exposiciones, documentos de los proveedores. Cada cifra dice cómo se sabe. Donde no lo sabemos, la ficha dice qué haría falta.",
      },
    ],
    [
      alike("limits"),
      { en: "What it is not", de: "Was es nicht ist", fr: "Ce qu’elle n’est pas", es: "Qué no es" },
      {
        en: "A sheet is not a safety data sheet and not a certificate. Trust a painted sample, not the screen.",
        de: "Ein Blatt ist kein Sicherheitsdatenblatt und kein Zertifikat. Verlassen Sie sich auf ein aufgestrichenes Muster, nicht auf den Bildschirm.",
        fr: "Une fiche n’est ni une fiche de données de sécurité ni un certificat. Se fier à un échantillon peint, non à l’écran.",
        es: "Una ficha no es una ficha de datos de seguridad ni un certificado. Fíese de una muestra pintada, no de la pantalla.",
      },
    ],
  ] as const,
} satisfies Texts;
