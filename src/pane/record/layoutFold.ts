import type { Context } from "../context";
import { folded } from "../dom/blocks";
import { element } from "../dom/element";
import type { PlanQuestion } from "../plan/planQuestion";
import type { LayoutPart } from "./layoutPart";

/** The fold below a plan that holds its layout; what is in it is fetched when it is first opened. */
export function layoutFold(context: Context): LayoutPart {
  const stage = element("div", {}, element("p", { class: "hint" }, "Loading…"));
  let question: PlanQuestion | null = null;
  let part: LayoutPart | null = null;
  const root = folded("Draw lots and make the record sheet", () => [stage]);
  root.addEventListener("toggle", () => {
    if (root.open && part === null) void fill();
  });
  return { root, follow };

  function follow(planned: PlanQuestion): void {
    question = planned;
    part?.follow(planned);
  }

  async function fill(): Promise<void> {
    try {
      const { layoutPart } = await import("./layoutPart");
      part ??= layoutPart(context);
      stage.replaceChildren(part.root);
      if (question !== null) part.follow(question);
    } catch (reason) {
      stage.textContent = "This could not be loaded. Check the connection, then open it again.";
      throw reason;
    }
  }
}
