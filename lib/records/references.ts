import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { nearestWord } from "../diagnostics/nearest-word.ts";
import { fileFault } from "./file-fault.ts";
import { isFaulty, type ParsedFiles } from "./parsed-files.ts";
import type { Parsed } from "./parsed-record.ts";
import { eachValue } from "./record-values.ts";
import type { RecordPath } from "./yaml-record.ts";

/** What kind of record a slug may name. */
const KINDS = ["pigments", "vehicles", "colours", "sources", "lots"] as const;
type Kind = (typeof KINDS)[number];

/**
 * Hold every reference between records against what is there, and every record
 * against what refers to it: a name that leads nowhere is an error, a pigment,
 * vehicle, reading or source that nothing uses is a warning.
 */
export function referenceFaults(
  files: ParsedFiles,
  builtInSources: ReadonlySet<string>,
  usedReadings: ReadonlySet<string>,
): Diagnostic[] {
  const diagnostics: Diagnostic[] = [];
  const used = new Set<string>();

  function refer(
    from: Parsed<unknown>,
    path: RecordPath,
    slug: string,
    kinds: readonly Kind[],
  ): void {
    const found = kinds.filter((kind) => files[kind].has(slug) || isFaulty(files, kind, slug));
    found.forEach((kind) => used.add(`${kind}/${slug}`));
    if (found.length > 0 || (kinds.includes("sources") && builtInSources.has(slug))) return;
    const known = [
      ...kinds.flatMap((kind) => [...files[kind].keys()]),
      ...(kinds.includes("sources") ? builtInSources : []),
    ];
    const near = nearestWord(slug, known);
    const elsewhere = KINDS.find((kind) => files[kind].has(slug));
    const hint =
      elsewhere !== undefined
        ? `there is one in ${elsewhere}/`
        : near === undefined
          ? undefined
          : `nearest: ${near}`;
    diagnostics.push({
      severity: "error",
      rule: "records/missing-reference",
      place: from.yaml.place(path),
      message: `There is no ${slug} in ${kinds.map((kind) => `${kind}/`).join(" or ")}`,
      actual: slug,
      expected: `the file name of a record in ${kinds.map((kind) => `${kind}/`).join(" or ")}`,
      ...(hint === undefined ? {} : { hint }),
    });
  }

  for (const colour of files.colours.values()) {
    const { record } = colour;
    record.pigments.forEach((part, i) =>
      refer(colour, ["pigments", i, "pigment"], part.pigment, ["pigments"]),
    );
    record.pigments.forEach(
      ({ paint }, i) =>
        paint !== undefined && refer(colour, ["pigments", i, "paint"], paint, ["colours"]),
    );
    record.tints?.forEach((tint, i) =>
      refer(colour, ["tints", i, "white"], tint.white, ["colours", "pigments"]),
    );
    record.additions?.forEach((addition, i) =>
      refer(colour, ["additions", i, "vehicle"], addition.vehicle, ["vehicles"]),
    );
    record.dryingTrials?.forEach(
      (trial, i) =>
        trial.tintedWith !== undefined &&
        refer(colour, ["dryingTrials", i, "tintedWith"], trial.tintedWith, ["colours", "pigments"]),
    );
    if (record.replacedBy !== undefined)
      refer(colour, ["replacedBy"], record.replacedBy, ["colours"]);
    if (record.standard !== undefined) refer(colour, ["standard"], record.standard, ["lots"]);
    if (record.vehicle !== undefined) refer(colour, ["vehicle"], record.vehicle, ["vehicles"]);
  }
  for (const lot of files.lots.values()) {
    const { colour, pigments, oil, additions = [], tints = [], standard } = lot.record;
    refer(lot, ["colour"], colour, ["colours"]);
    pigments.forEach(({ pigment }, i) =>
      refer(lot, ["pigments", i, "pigment"], pigment, ["pigments"]),
    );
    if (oil !== undefined) refer(lot, ["oil", "vehicle"], oil.vehicle, ["vehicles"]);
    additions.forEach(({ vehicle }, i) =>
      refer(lot, ["additions", i, "vehicle"], vehicle, ["vehicles"]),
    );
    (standard?.tints ?? []).forEach(({ white }, i) =>
      refer(lot, ["standard", "tints", i, "white"], white, ["colours", "pigments"]),
    );
    tints.forEach(({ white }, i) =>
      refer(lot, ["tints", i, "white"], white, ["colours", "pigments"]),
    );
  }
  for (const trial of files.trials.values()) {
    const { record } = trial;
    refer(trial, ["colour"], record.colour, ["colours"]);
    if (record.lot !== undefined) refer(trial, ["lot"], record.lot, ["lots"]);
    if (record.kind === "drying" && record.tintedWith !== undefined)
      refer(trial, ["tintedWith"], record.tintedWith, ["colours", "pigments"]);
  }
  const { workshop } = files;
  if (workshop?.record.vehicle !== undefined)
    refer(workshop, ["vehicle"], workshop.record.vehicle, ["vehicles"]);
  if (workshop?.record.strengthReference !== undefined)
    refer(workshop, ["strengthReference"], workshop.record.strengthReference, ["colours"]);
  workshop?.record.leadingPair?.forEach((slug, i) =>
    refer(workshop, ["leadingPair", i], slug, ["colours"]),
  );
  workshop?.record.pairs?.forEach((pair, i) => {
    const at = Array.isArray(pair) ? ["pairs", i] : ["pairs", i, "colours"];
    (Array.isArray(pair) ? pair : pair.colours).forEach((slug, j) =>
      refer(workshop, [...at, j], slug, ["colours"]),
    );
  });
  for (const answer of files.answers.values()) {
    answer.record.colours?.forEach((slug, i) => refer(answer, ["colours", i], slug, ["colours"]));
    answer.record.reply?.colours?.forEach((slug, i) =>
      refer(answer, ["reply", "colours", i], slug, ["colours"]),
    );
    answer.record.claims?.forEach((claim, i) => {
      for (const key of ["lowestOf", "highestOf"] as const) {
        const rivals: unknown = key in claim ? (claim as Record<string, unknown>)[key] : undefined;
        if (Array.isArray(rivals))
          rivals.forEach((slug: string, j) =>
            refer(answer, ["claims", i, key, j], slug, ["colours"]),
          );
      }
    });
  }
  for (const record of [
    ...files.pigments.values(),
    ...files.vehicles.values(),
    ...files.colours.values(),
  ]) {
    eachValue(record.record, (value, path) => {
      if (path.at(-1) === "source" && typeof value === "string")
        refer(record, path, value, ["sources"]);
    });
  }

  // What a record with a fault refers to is not known.
  const allRead = files.faulty.size === 0;
  for (const kind of ["pigments", "vehicles", "sources"] as const) {
    for (const { slug, file } of files[kind].values()) {
      if (allRead && !used.has(`${kind}/${slug}`)) diagnostics.push(unused(file, slug));
      if (kind === "sources" && builtInSources.has(slug)) {
        diagnostics.push(
          fileFault(file, {
            severity: "error",
            rule: "records/source-clash",
            message: `The built-in bibliography has a source ${slug} already: give the file another name`,
            actual: slug,
            expected: "a key that the built-in bibliography does not have",
          }),
        );
      }
    }
  }
  for (const [stem, { file }] of files.readings) {
    if (allRead && !usedReadings.has(stem)) diagnostics.push(unused(file, stem));
  }
  return diagnostics;
}

function unused(file: string, slug: string): Diagnostic {
  return fileFault(file, {
    severity: "warning",
    rule: "records/unused",
    message: `No record refers to ${slug}, so nothing comes of it`,
    actual: slug,
    expected: "a record that refers to it",
  });
}
