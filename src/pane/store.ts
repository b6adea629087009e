/** A record that changes, and those who want to know. */
export interface Store<State> {
  get(): State;
  /** Changes some fields and tells the listeners. */
  set(change: Partial<State>): void;
  listen(listener: (now: State, before: State) => void): void;
}

/** @param first what it holds until it is changed; listeners stay for as long as the pane */
export function store<State extends object>(first: State): Store<State> {
  let now = first;
  const listeners: ((now: State, before: State) => void)[] = [];
  return {
    get: () => now,
    set(change) {
      const before = now;
      now = { ...before, ...change };
      for (const listener of listeners) listener(now, before);
    },
    listen: (listener) => void listeners.push(listener),
  };
}
