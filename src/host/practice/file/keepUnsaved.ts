import type { Grid } from "../grid";
import type { FileBar } from "./fileBar";
import { forgetWork, keepWork, type UnsavedWork } from "./unsavedWork";

/** Work that is kept until it is saved. */
export interface Keeping {
  /** From here on the workbook is as its file, or as its copy just saved. */
  begin(): void;
  /**
   * The workbook as it stands is being saved.
   *
   * @returns to be called once it is saved; false when the workbook has changed meanwhile, and so is still unsaved
   */
  saving(): () => boolean;
  /** The workbook has changes of an earlier visit. */
  resume(): void;
  isDirty(): boolean;
}

/** Changes of cells, sheets, columns, merges and names; choosing a cell and working out results are none. */
const changing = new RegExp(
  String.raw`^sheet\.mutation\.(set-range-values|insert-|remove-|move-|delete-|add-worksheet-merge|reorder-range` +
    "|set-worksheet-(name|col-width|order|hidden)|set-col-(hidden|visible))" +
    String.raw`|^formula\.mutation\.(set|remove)-defined-name`,
);
const pause = 1000;

/**
 * Keeps unsaved work in the browser's own storage a moment after each change, so that it outlives a reload, and asks
 * before the page is left with changes.
 *
 * @param work the work as it stands
 */
export function keepUnsaved({ grid, bar }: { grid: Grid; bar: FileBar }, work: () => UnsavedWork): Keeping {
  let dirty = false;
  let changes = 0;
  let waiting = 0;
  const mark = (is: boolean) => {
    dirty = is;
    bar.forget.hidden = !is;
  };
  const begin = () => {
    window.clearTimeout(waiting);
    mark(false);
    void forgetWork();
  };
  grid.api.addEvent(grid.api.Event.CommandExecuted, ({ id, options }) => {
    if (!changing.test(id) || options?.fromFormula === true || options?.onlyLocal === true) return;
    changes += 1;
    mark(true);
    window.clearTimeout(waiting);
    waiting = window.setTimeout(() => {
      keepWork(work()).catch(() => {
        bar.status.textContent = "This browser keeps no unsaved work: save a copy before you leave.";
      });
    }, pause);
  });
  window.addEventListener("beforeunload", (event) => {
    if (dirty) event.preventDefault();
  });
  bar.forget.addEventListener("click", () => {
    window.clearTimeout(waiting);
    void forgetWork();
    bar.forget.hidden = true;
    bar.status.textContent = "The unsaved work is no longer kept in this browser. It is still in the cells.";
  });
  const saving = () => {
    const before = changes;
    return () => {
      if (changes === before) begin();
      return changes === before;
    };
  };
  return { begin, saving, resume: () => mark(true), isDirty: () => dirty };
}
