/**
 * Gathers what is asked in one tick, so that it is answered together.
 *
 * @param answerAll gets the different questions of a tick in the order in which they were asked; may not reject
 * @returns asks one question; null where `answerAll` gave no answer to it
 */
export function oneTick<Answer>(
  answerAll: (questions: readonly string[]) => Promise<readonly (Answer | null)[]>,
): (question: string) => Promise<Answer | null> {
  /** Each question's place among those of the tick. */
  let asked: { readonly places: Map<string, number>; readonly answers: Promise<readonly (Answer | null)[]> } | null =
    null;
  const begin = () => {
    const places = new Map<string, number>();
    const answers = Promise.resolve().then(() => {
      asked = null;
      return answerAll([...places.keys()]);
    });
    return { places, answers };
  };
  return async (question) => {
    asked ??= begin();
    const { places, answers } = asked;
    const place = places.get(question) ?? places.size;
    places.set(question, place);
    return (await answers)[place] ?? null;
  };
}
