/** METHODS 4.1: a whole cell that counts as 0. */
export function isNoneWord(text: string): boolean {
  return ["none", "nil", "nothing", "-", "–", "—"].includes(text.trim().toLowerCase());
}

/** METHODS 4.1: a cell that may mark a plant as lost begins with one of these. */
export function beginsWithLostWord(text: string): boolean {
  return /^\s*(lost|dead|died|stolen|broken|missing plant)\b/i.test(text);
}
