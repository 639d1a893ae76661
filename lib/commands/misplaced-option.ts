/** Options that not every command has, each with those that do. */
const COMMANDS_OF: Readonly<Record<string, readonly string[]>> = {
  output: ["start", "build", "publish", "pack", "cards", "labels"],
  workshop: ["build", "publish"],
  base: ["start", "build", "publish", "cards", "labels", "pictures"],
  port: ["start"],
  strict: ["build", "publish", "check", "cards", "labels", "pictures", "next"],
  claims: ["start", "build", "publish", "check"],
  date: ["start", "build", "publish", "check", "cards", "labels", "pictures", "next", "new"],
  only: ["cards", "labels", "pictures"],
  family: ["cards", "labels", "pictures"],
  size: ["cards", "labels"],
  paper: ["cards"],
  since: ["start", "build", "check", "cards", "next"],
  incomplete: ["cards"],
  proof: ["cards"],
  lot: ["labels"],
  copies: ["labels"],
  scale: ["read"],
  uses: ["check"],
  json: ["check"],
  to: ["publish", "pictures", "migrate"],
  endpoint: ["publish"],
  "dry-run": ["publish", "migrate"],
  write: ["migrate"],
  confirm: ["publish"],
};

/** What is wrong with the first option given that belongs to another command; undefined when all fit. */
export function misplacedOption(command: string, given: readonly string[]): string | undefined {
  const misplaced = given.find((option) => COMMANDS_OF[option]?.includes(command) === false);
  return misplaced === undefined
    ? undefined
    : `${command} has no --${misplaced}: it belongs to ${COMMANDS_OF[misplaced]?.join(", ") ?? ""}`;
}
