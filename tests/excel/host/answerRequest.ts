import type { HostObject, HostRefusal } from "./hostObject";

/** What Excel.run sends: objects by number, each reached from another, and what to do with them in order. */
export interface Request {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, Path>>;
}

interface Action {
  readonly Id: number;
  /** 1 make, 2 load, 3 call, 4 set, 5 trace. */
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: Given;
  readonly QueryInfo?: { readonly Select?: readonly string[] };
}

interface Path {
  /** 1 the workbook, 2 a service, 3 through a method, 4 through a property, 5 an item, 6 an object kept before. */
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: Given;
}

/** What a method or a setting is given; where an object is, the second list has its number and elsewhere 0. */
interface Given {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly number[];
}

function given({ Arguments = [], ReferencedObjectPathIds: numbers = [] }: Given = {}, object: Reach["object"]) {
  return Arguments.map((argument, at) => (numbers[at] ? object(numbers[at]) : argument));
}

/** What lives longer than a request: the workbook, and the objects that the page asked to keep. */
export interface Session {
  readonly workbook: HostObject;
  readonly kept: Map<string, HostObject>;
}

/** Answers one request as Excel does: all its results, or its error and the results before it. */
export function answerRequest({ Actions, ObjectPaths }: Request, session: Session): object {
  const known = new Map<number, HostObject>();
  const Results: object[] = [];
  // An event's handler is attached when its trace comes back.
  const TraceIds: number[] = [];
  const object = (id: number): HostObject => {
    const found = known.get(id) ?? reached(ObjectPaths[id], { object, ...session });
    known.set(id, found);
    return found;
  };
  for (const [ActionIndex, action] of Actions.entries()) {
    try {
      const traced = action.ActionType === 5;
      if (traced) TraceIds.push(action.Id);
      Results.push({
        ActionId: action.Id,
        Value: traced ? null : resultOf(action, object(action.ObjectPathId), { ...session, object }),
      });
    } catch (reason) {
      const { refusal: Code } = reason as HostRefusal;
      if (Code === undefined) throw reason;
      return { Error: { Code, Message: `The fake host says ${Code}.`, Location: "", ActionIndex }, Results, TraceIds };
    }
  }
  return { Results, TraceIds };
}

interface Reach extends Session {
  readonly object: (id: number) => HostObject;
}

function reached(path: Path | undefined, { object, workbook, kept }: Reach): HostObject {
  if (path === undefined) throw new Error("a request names an object that it does not describe");
  const { ObjectPathType, Name, ParentObjectPathId = 0, ArgumentInfo } = path;
  const passed = given(ArgumentInfo, object);
  switch (ObjectPathType) {
    case 1:
      return workbook;
    case 2:
      return {};
    case 3:
      return needed(object(ParentObjectPathId).methods?.[Name], Name)(...passed) as HostObject;
    case 4:
      return Name === "CustomFunctions" ? {} : needed(object(ParentObjectPathId).objects?.[Name], Name)();
    case 5:
      return needed(object(ParentObjectPathId).item, "item")(passed[0]);
    default:
      return needed(kept.get(Name), Name);
  }
}

function resultOf(
  { ActionType, Name, ArgumentInfo, QueryInfo }: Action,
  target: HostObject,
  { kept, object }: Reach,
): unknown {
  const passed = given(ArgumentInfo, object);
  if (target.missing) return null;
  if (Name === "_KeepReference") kept.set(`kept ${kept.size}`, target);
  switch (ActionType) {
    case 1:
      return { _ReferenceId: [...kept].find(([, one]) => one === target)?.[0] };
    case 2:
      return loaded(target, QueryInfo?.Select ?? []);
    case 3:
      return target.methods?.[Name]?.(...passed) ?? null;
    case 4:
      return needed(target.settable?.[Name], Name)(passed[0]) ?? null;
    default:
      throw new Error(`the fake host knows no action ${ActionType}`);
  }
}

/** The properties asked for, those of another object as "worksheet/name". */
function loaded(object: HostObject, select: readonly string[]): object {
  if (object.items !== undefined) return { _Items: object.items().map((item) => loaded(item, ["id", ...select])) };
  const found: Record<string, unknown> = {};
  for (const path of select) {
    const [first = "", ...rest] = path.split("/");
    const name = first.charAt(0).toUpperCase() + first.slice(1);
    found[name] =
      rest.length === 0
        ? needed(object.properties?.[name], path)()
        : { ...(found[name] as object), ...loaded(needed(object.objects?.[name], path)(), [rest.join("/")]) };
  }
  return found;
}

/** A name that the fake host does not know is a gap in it, not an answer of Excel's. */
function needed<Part>(part: Part | undefined, name: string): Part {
  if (part === undefined) throw new Error(`the fake host has no ${name}`);
  return part;
}
