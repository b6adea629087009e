import { readFileSync } from "node:fs";

/** One plant of Marlpit Corner; `grams` is "lost" for a lost plant. */
interface DemoPlant {
  readonly plant: string;
  readonly treatment: string;
  readonly bed: number;
  readonly grams: number | "lost";
}

/** The 32 courgette plants of our own demo, mulch by mulch, beds 1 to 8. */
export const demoPlants: readonly DemoPlant[] = readFileSync("tests/reference/demoPlants.csv", "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((row) => {
    const [plant = "", treatment = "", bed, grams] = row.split(",");
    return { plant, treatment, bed: Number(bed), grams: grams === "NA" ? "lost" : Number(grams) };
  });

/** One mulch's plants under its heading, beds 1 to 8. */
export function mulch(name: string): readonly (string | number)[] {
  return [name, ...demoPlants.filter(({ treatment }) => treatment === name).map(({ grams }) => grams)];
}
