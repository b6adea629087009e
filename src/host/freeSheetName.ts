/** As long as Excel lets a sheet's name be. */
const longest = 31;

/**
 * A name that a sheet may have and that none has yet: the name wanted, cleaned of what Excel does not take (: \ / ? * [ ]
 * and an apostrophe at either end) and cut to 31 characters; with " 2", " 3" … behind where it is taken in any letter
 * case. "History" is Excel's own.
 */
export function freeSheetName(wanted: string, taken: readonly string[]): string {
  const allowed = wanted.replace(/[:\\/?*[\]\p{Cc}]/gu, " ").replace(/\s+/g, " ");
  const clean = allowed.replace(/^[\s']+|[\s']+$/g, "") || "Sheet";
  const used = new Set(["history", ...taken.map((name) => name.toLowerCase())]);
  for (let number = 1; ; number += 1) {
    const ending = number === 1 ? "" : ` ${number}`;
    const name = `${cut(clean, longest - ending.length)}${ending}`;
    if (!used.has(name.toLowerCase())) return name;
  }
}

/** Cuts by whole characters: half an emoji is no character. Excel counts UTF-16 units, and takes no apostrophe last. */
function cut(name: string, most: number): string {
  let short = "";
  for (const character of name) {
    if (short.length + character.length > most) break;
    short += character;
  }
  return short.replace(/[\s']+$/, "");
}
