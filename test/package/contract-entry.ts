/** What is to be said of a state of the published form. */
export interface ContractEntry {
  readonly version: number;
  /** 16 digits of a hash. */
  readonly state: string;
  /** Lines of a list; none where the form is as it was. */
  readonly points: readonly string[];
  /** Whether something went or became another. */
  readonly breaks: boolean;
}

/**
 * CONTRACT.md with an entry more, the newest first; as it is where the form is as it was.
 * @throws Error where something that programs rely on went under a version that is stated already.
 */
export function withEntry(
  contract: string,
  { version, state, points, breaks }: ContractEntry,
): string {
  if (points.length === 0) return contract;
  const head = `## Version ${version}\n`;
  const entry = `### ${state}\n\n${points.join("\n")}\n`;
  if (contract.includes(head)) {
    if (breaks)
      throw new Error(
        `What programs rely on went or is another: count SCHEMA_VERSION up in lib/site/schema-version.ts\n${points.join("\n")}`,
      );
    return contract.replace(head, `${head}\n${entry}`);
  }
  return contract.replace(/^## Version /m, `${head}\n${entry}\n## Version `);
}
