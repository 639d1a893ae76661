/** Gloss of a trade term, where a page first meets it. */
export const TRADE = {
  Vollton: "die Farbe, wie sie aus der Tube kommt, in einem Film, der seinen Grund deckt",
  Unterton: "die Farbe eines dünnen Films über Weiß",
  Aufhellung: "die Farbe mit Weiß gemischt",
  "L* a* b*":
    "Helligkeit von 0 bis 100, dann Grün bis Rot und Blau bis Gelb; C* ist der Abstand von Grau",
  Munsell: "Buntton, Helligkeit (Value) von 0 (Schwarz) bis 10 (Weiß), Chroma; N ist unbunt",
  Ölindex: "Gramm Öl auf 100\u00a0g Pigment, in der fertigen Farbe",
  Farbstärke: "wie weit ein wenig der Farbe in einem Weiß reicht",
  Oberflächenglanz:
    "ein glänzendes Schwarz wirkt tiefer, und ein Messgerät kann mit oder ohne Glanz messen",
  "d/8": "von allen Seiten beleuchtet und 8° neben dem Lot gemessen, mit oder ohne Glanz",
  "Kategorien I\u2013V":
    "Lichtechtheit, nach der Farbänderung in einer genormten Prüfung; I ist die beste",
  Blauwollskala: "acht gefärbte Wollen, die nacheinander ausbleichen, Nummer 8 zuletzt",
  "fett auf mager": "in jeder Schicht mehr Öl als in der darunter",
} as const satisfies Record<string, string>;
