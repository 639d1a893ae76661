/**
 * Supplemental statements of the EU frame. Between angle brackets stands what the
 * label fills in.
 *
 * @source clp-annex-3 : provenance r
 * @source clp-annex-4-memory : provenance m
 */
import type { SupplementalCode } from "./supplemental-code.ts";
import { wording, type StatementWording } from "./hazard-statement-wording.ts";

export const SUPPLEMENTAL_TEXTS: Readonly<Record<SupplementalCode, StatementWording>> = {
  EUH031: wording(
    "mmmm",
    "Contact with acids liberates toxic gas.",
    "Au contact d'un acide, dégage un gaz toxique.",
    "Entwickelt bei Berührung mit Säure giftige Gase.",
    "En contacto con ácidos libera gases tóxicos.",
  ),
  EUH032: wording(
    "mmmm",
    "Contact with acids liberates very toxic gas.",
    "Au contact d'un acide, dégage un gaz très toxique.",
    "Entwickelt bei Berührung mit Säure sehr giftige Gase.",
    "En contacto con ácidos libera gases muy tóxicos.",
  ),
  EUH066: wording(
    "mmmm",
    "Repeated exposure may cause skin dryness or cracking.",
    "L'exposition répétée peut provoquer dessèchement ou gerçures de la peau.",
    "Wiederholter Kontakt kann zu spröder oder rissiger Haut führen.",
    "La exposición repetida puede provocar sequedad o formación de grietas en la piel.",
  ),
  EUH071: wording(
    "mmmm",
    "Corrosive to the respiratory tract.",
    "Corrosif pour les voies respiratoires.",
    "Wirkt ätzend auf die Atemwege.",
    "Corrosivo para las vías respiratorias.",
  ),
  EUH201: wording(
    "mmmm",
    "Contains lead. Should not be used on surfaces liable to be chewed or sucked by children.",
    "Contient du plomb. Ne pas utiliser sur les objets susceptibles d'être mâchés ou sucés par des enfants.",
    "Enthält Blei. Nicht für den Anstrich von Gegenständen verwenden, die von Kindern gekaut oder gelutscht werden könnten.",
    "Contiene plomo. No utilizar en objetos que los niños puedan masticar o chupar.",
  ),
  EUH201A: wording(
    "rmmm",
    "Warning! Contains lead.",
    "Attention! Contient du plomb.",
    "Achtung! Enthält Blei.",
    "¡Atención! Contiene plomo.",
  ),
  EUH203: wording(
    "mmmm",
    "Contains chromium (VI). May produce an allergic reaction.",
    "Contient du chrome (VI). Peut produire une réaction allergique.",
    "Enthält Chrom (VI). Kann allergische Reaktionen hervorrufen.",
    "Contiene cromo (VI). Puede provocar una reacción alérgica.",
  ),
  EUH208: wording(
    "rmmm",
    "Contains <name of sensitising substance>. May produce an allergic reaction.",
    "Contient du (de la) <nom de la substance sensibilisante>. Peut produire une réaction allergique.",
    "Enthält <Name des sensibilisierenden Stoffes>. Kann allergische Reaktionen hervorrufen.",
    "Contiene <nombre de la sustancia sensibilizante>. Puede provocar una reacción alérgica.",
  ),
  EUH210: wording(
    "rmmm",
    "Safety data sheet available on request.",
    "Fiche de données de sécurité disponible sur demande.",
    "Sicherheitsdatenblatt auf Anfrage erhältlich.",
    "Puede solicitarse la ficha de datos de seguridad.",
  ),
  EUH211: wording(
    "mmmm",
    "Warning! Hazardous respirable droplets may be formed when sprayed. Do not breathe spray or mist.",
    "Attention! Des gouttelettes respirables dangereuses peuvent se former lors de la pulvérisation. Ne pas respirer les aérosols ni les brouillards.",
    "Achtung! Beim Sprühen können gefährliche lungengängige Tröpfchen entstehen. Aerosol oder Nebel nicht einatmen.",
    "¡Atención! Al rociar pueden formarse gotas respirables peligrosas. No respirar el aerosol ni la niebla.",
  ),
  EUH212: wording(
    "mmmm",
    "Warning! Hazardous respirable dust may be formed when used. Do not breathe dust.",
    "Attention! Une poussière respirable dangereuse peut se former lors de l'utilisation. Ne pas respirer cette poussière.",
    "Achtung! Bei der Verwendung kann gefährlicher lungengängiger Staub entstehen. Staub nicht einatmen.",
    "¡Atención! Al utilizarse, puede formarse polvo respirable peligroso. No respirar el polvo.",
  ),
};
