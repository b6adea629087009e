import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { matrix } from "./call";
import { runs } from "./lawful";

describe("DRAWLOTS", () => {
  it("gives the plan of a number again, with every treatment once in every bed, whatever the treatments are called", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 6 }),
        fc.integer({ min: 2, max: 9 }),
        fc.integer({ min: 1, max: 9999 }),
        (ways, beds, number) => {
          const names = Array.from({ length: ways }, (_, at) => `Mulch ${at + 1}`);
          const plan = () => matrix("DRAWLOTS", names, beds, number, "table", "one each").slice(1);
          expect(plan()).toEqual(plan());
          for (let bed = 1; bed <= beds; bed += 1) {
            const grown = plan()
              .filter((row) => row[1] === bed)
              .map((row) => String(row[2]));
            expect(grown.toSorted()).toEqual(names);
          }
          const renamed = matrix(
            "DRAWLOTS",
            names.map((name) => name.replace("Mulch", "Way")),
            beds,
            number,
            "table",
            "one each",
          ).slice(1);
          expect(renamed.map((row) => String(row[2]).slice(-1))).toEqual(plan().map((row) => String(row[2]).slice(-1)));
        },
      ),
      runs,
    );
  });
});
