import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { dropDowns } from "../../.build/dropDowns.js";
import { functionsJson } from "../../.build/functionsJson.js";
import { doors } from "../../src/functions/doors";
import { built } from "./built";
import { contract } from "./contract";

interface Parameter {
  readonly name: string;
  readonly description: string;
  readonly type: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
  readonly customEnumId?: string;
}

interface Entry {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly options: Readonly<Record<string, boolean>>;
  readonly parameters: readonly Parameter[];
  readonly result: { readonly type?: string; readonly dimensionality: string };
}

interface Offer {
  readonly id: string;
  readonly type: string;
  readonly values: readonly { readonly name: string; readonly stringValue: string }[];
}

const metadata: { readonly functions: readonly Entry[]; readonly enums: readonly Offer[] } = JSON.parse(
  built("functions.json"),
);
const entries = metadata.functions;
const ids = entries.map(({ id }) => id);

describe("functions.json as a whole", () => {
  it("names exactly the functions of the contract, in the order of the alphabet", () => {
    expect(ids).toEqual(Object.keys(contract).sort());
  });

  it("names exactly the functions that are associated", () => {
    expect(ids).toEqual(Object.keys(doors).sort());
  });

  // https://learn.microsoft.com/office/dev/add-ins/excel/custom-functions-json: both stand beside "functions".
  it("lets error values and rich values of a range through to the functions", () => {
    const { functions: _, enums: __, ...rest } = metadata;
    expect(rest).toEqual({
      allowCustomDataForDataTypeAny: true,
      allowErrorForDataTypeAny: true,
    });
  });

  it("says what UPDOWN and COMPARETWO are in the words people search for", () => {
    expect(entries.find(({ id }) => id === "UPDOWN")?.description).toMatch(/^Percent change/);
    expect(entries.find(({ id }) => id === "COMPARETWO")?.description).toContain("t-test");
  });
});

// Limits: the page above, and the lengths of extensionFunction in the schema of Microsoft's unified manifest, v1.30.
describe.each(entries)("$id", ({ id, name, description, options, parameters, result }) => {
  it("has one name, of letters and digits, which is its id", () => {
    expect(id).toMatch(/^[A-Z][A-Z0-9]{2,63}$/);
    expect(name).toBe(id);
  });

  it("has a description that Excel can show", () => {
    expect(description.length).toBeGreaterThan(0);
    expect(description.length).toBeLessThanOrEqual(1024);
  });

  it("has the parameters of the contract", () => {
    const told = parameters.map((parameter) => parameter.name + (parameter.optional ? "?" : ""));
    expect(told.join(" ")).toBe(contract[id]);
  });

  it("takes any cell in every parameter but those with words to choose from, and explains it", () => {
    for (const parameter of parameters) {
      expect(parameter.type, parameter.name).toBe(dropDowns[id]?.[parameter.name] === undefined ? "any" : "string");
      expect(parameter.name).toMatch(/^[a-z][a-z_]{0,63}$/);
      expect(parameter.description.length, parameter.name).toBeGreaterThan(0);
      expect(parameter.description.length, parameter.name).toBeLessThanOrEqual(512);
    }
  });

  it("asks for the addresses of its arguments, answers with a matrix, and is not volatile", () => {
    expect(options).toEqual({ requiresParameterAddresses: true });
    expect(result.dimensionality).toBe("matrix");
  });
});

describe("the words that Excel offers", () => {
  const offers = new Map(metadata.enums.map((offer) => [offer.id, offer]));

  // Limits: the page above; 3 to 64 characters for the id of a list.
  it("are lists that exactly one argument names each", () => {
    const named = entries.flatMap(({ parameters }) => parameters.flatMap(({ customEnumId = [] }) => customEnumId));
    expect(named.sort()).toEqual([...offers.keys()].sort());
    for (const id of named) expect(id).toMatch(/^[A-Za-z][A-Za-z_]{2,63}$/);
  });

  it("are those of the lists, each written as it is typed", () => {
    for (const [id, words] of Object.entries(dropDowns)) {
      for (const [argument, list] of Object.entries(words)) {
        const offer = offers.get(`${id}_${argument}`);
        expect(offer?.type).toBe("string");
        expect(offer?.values.map(({ stringValue }) => stringValue)).toEqual(list);
      }
    }
  });
});

it("a mistake in a doc comment fails the build", async () => {
  const folder = mkdtempSync(join(tmpdir(), "fairbed-"));
  const bad = "/** @customfunction TWICE */\nexport function twice(range: Wrong): number { return 2; }\n";
  writeFileSync(join(folder, "twice.ts"), bad);
  await expect(functionsJson(folder)).rejects.toThrow("Wrong");
  rmSync(folder, { recursive: true });
});
