import type { Within } from "./seen";

/** One way for the Explain part to look. */
export interface View {
  readonly root: HTMLElement;
  /** What a screen reader is told when it appears. */
  readonly says: string;
  /** True while the grower is choosing cells for it, so that it must stay. */
  readonly isHeld: () => boolean;
  /** Called when the selection moved while it stays; `lit` is the selected cell among those explained. */
  readonly follow: (lit: Within | null) => void;
}
