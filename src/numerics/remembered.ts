/** More answers than this are forgotten, all at once, so that a workbook can stay open for months. */
const MOST = 500;

/**
 * The same function of numbers, remembering its answers: for the few that take long and are asked again and again by
 * the cells of one worksheet.
 */
export function remembered<Arguments extends readonly (number | readonly number[])[], Answer>(
  compute: (...given: Arguments) => Answer,
): (...given: Arguments) => Answer {
  const known = new Map<string, { readonly answer: Answer }>();
  return (...given) => {
    const key = given.join(";");
    const old = known.get(key);
    if (old !== undefined) return old.answer;
    const answer = compute(...given);
    if (known.size >= MOST) known.clear();
    known.set(key, { answer });
    return answer;
  };
}
