/** What the command line does, in the order of `--help`. */
export const COMMANDS = {
  start: "build, serve on this machine, rebuild when a record is edited",
  build: "build the site once",
  check: "check the records; write no page",
  cards: "print shelf cards into one PDF",
  labels: "print labels for tubes and jars into one PDF",
  pictures: "write a zip a colour of what a shop's listing takes: pictures, photographs, a text",
  next: "what to measure, ask or print next",
  publish: "say what would differ from what is published, and bring the site there",
  pack: "put the whole content folder into one file",
  unpack: "bring it back into a new folder, every file as it was",
  migrate: "say how records of another version are written today; with --write rewrite them",
  read: "say what an instrument's file holds, and write it as a reading",
  new: "write a commented starter record of a workshop, pigment, vehicle, colour, answer, lot or trial",
};
export type CommandName = keyof typeof COMMANDS;

/** What is written behind a command's name. */
export const TAKES: Readonly<Partial<Record<CommandName, string>>> = {
  publish: "--to TARGET",
  unpack: "FILE",
  read: "FILE",
  new: 'KIND "Name"',
};

/** Commands that take words beside their options, and how many at most. */
export const WORDS_OF: Readonly<Partial<Record<CommandName, number>>> = {
  read: 1,
  unpack: 1,
  new: Infinity,
};

export function isCommand(name: string): name is CommandName {
  return Object.hasOwn(COMMANDS, name);
}
