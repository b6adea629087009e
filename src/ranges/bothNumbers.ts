import { readAmount } from "./readAmount";

/** The two numbers that a doubtful text may mean: 1250 and 1.25 for "1,250". */
export function bothNumbers(text: string): readonly [taken: number, other: number] {
  const said = readAmount(text);
  if (said.amount === "unreadable") return [0, 0];
  return [said.value, said.otherwise ?? said.value];
}
