/** The name of a reading file without the ending that a record may give it: "bone-black.csv" is bone-black. */
export function readingStem(name: string): string {
  return name.replace(/\.(csv|txt|cgats|it8|cxf|xml)$/i, "");
}
