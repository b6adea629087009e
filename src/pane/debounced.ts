/** A function that runs `work` once things have been quiet for so many milliseconds. */
export function debounced(work: () => void, pause: number): () => void {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  return () => {
    clearTimeout(waiting);
    waiting = setTimeout(work, pause);
  };
}
