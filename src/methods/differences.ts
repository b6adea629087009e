/**
 * New − usual, pair by pair, in the values' unit.
 *
 * @param usual and tried: as many of one as of the other; anything else is a programmer's mistake and throws RangeError
 */
export function differences(usual: readonly number[], tried: readonly number[]): readonly number[] {
  if (usual.length !== tried.length) throw new RangeError(`${usual.length} usual plants for ${tried.length} new ones`);
  return tried.map((value, pair) => value - (usual[pair] ?? Number.NaN));
}
