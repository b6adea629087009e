/** A file's name without its ending: "Harvest" of "Harvest.xlsx". */
export function withoutEnding(file: string): string {
  return file.replace(/\.\w+$/, "");
}
