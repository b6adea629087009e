import { plainNumber } from "./plainNumber";

/** A count and its noun: "1 plant", "7 plants"; `many` where an s is not enough. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${plainNumber(count)} ${count === 1 ? one : many}`;
}
