import { bundledProgram } from "./bundled-program.js";

/** The module of the command line: out of a bundle, or where none can be kept by tsx. @param use what the command is, by one word. */
export async function program(use) {
  return (await bundledProgram(use)) ?? (await fromSource());
}

async function fromSource() {
  const { register } = await import("tsx/esm/api");
  register();
  return import("./command-line.ts");
}
