import { blocks } from "./blocks/blocks";
import type { Block, Case } from "./experiment";

/** A case with the block it stands in and a name of its own. */
export interface NamedCase {
  readonly name: string;
  readonly block: Block;
  readonly case: Case;
}

/** The cases of some blocks, in the table's order. */
export function namedCases(some: readonly Block[]): readonly NamedCase[] {
  return some.flatMap((block) =>
    block.cases.map((one) => ({ name: [block.title, ...one.about].join(" | "), block, case: one })),
  );
}

/** Every case of every block. */
export const allCases: readonly NamedCase[] = namedCases(blocks);
