import { describe, expect, test } from "vitest";
import { cellWords } from "../../src/words/cellWords";
import { explain } from "../../src/words/explain";
import { wordCount } from "../../src/words/wordCount";
import { asText } from "./asText";
import { everyTypical } from "./everyTypical";

describe.each(Object.entries(everyTypical))("%s", (title, found) => {
  test("explain gives the approved parts, and cellWords the approved words", async () => {
    const name = title.replace(/%/g, "percent").replace(/[^A-Za-z0-9.+]+/g, "-");
    const text = `${title}\n\n${asText(explain(found))}\nwords:\n  ${cellWords(found)}\n`;
    await expect(text).toMatchFileSnapshot(`approved/${name}.txt`);
  });

  test("cellWords has at most 60 words, 15 more for each of several treatments, and begins with the finding", () => {
    const words = cellWords(found);
    const more = found.finding === "many-treatments" ? 15 * found.treatments.length : 0;
    expect(wordCount(words)).toBeLessThanOrEqual(60 + more);
    expect(words.startsWith(explain(found).finding)).toBe(true);
  });
});
