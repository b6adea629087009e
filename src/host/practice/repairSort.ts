import { BaseReferenceObject } from "@univerjs/engine-formula";

/**
 * Mends an error of Univer 0.25.1: `=SORT(range)` sorts the block that the engine keeps for all formulas over that
 * range, so later formulas over it silently read the cells in the wrong order. Here every formula gets its own block.
 */
export function repairSort(): void {
  const shared = BaseReferenceObject.prototype.toArrayValueObject;
  BaseReferenceObject.prototype.toArrayValueObject = function () {
    return shared.call(this, false);
  };
}
