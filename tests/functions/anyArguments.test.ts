import { expect, it } from "vitest";
import { theDesk } from "../../src/answers/theDesk";
import { doors } from "../../src/functions/doors";
import { seeded } from "../seeded";
import { type Id, replyOf } from "./call";

const draw = seeded(83);
const pick = <Item>(items: readonly Item[]): Item => items[draw(items.length)] as Item;

const ids = Object.keys(doors) as Id[];
const names = ["Straw", "straw ", "Bare soil", "B1", "B2", "Bed 1", "Plant", "Treatment", "Grams (g)", "Date", ""];
const notes = [
  "lost",
  "dead",
  "-",
  "none",
  "n/a",
  "177 g",
  "1 lb 4 oz",
  "506*",
  "1,250",
  "0,7 kg",
  "=A1",
  "25%",
  "#N/A",
];
const words = ["answer", "table", "words", "say", "cautions", "pairs", "beds", "ranks", "count as zero", "all pairs"];
const odd = [0, -0, -1, 1, 2.5, 1e-320, 1e300, -1e300, Number.NaN, Number.POSITIVE_INFINITY, 45_474, 0.1, 8, 4, 500];
/** The shapes in which Microsoft's pages say that an argument, or a cell of one, may arrive. */
const wrapped = [
  null,
  undefined,
  true,
  false,
  { type: "Double", basicValue: 12.5, numberFormat: "0.0" },
  { type: "FormattedNumber", basicValue: 0.25, numberFormat: "0%" },
  { type: "Error", basicType: "Error", basicValue: "#N/A" },
  { type: "Empty" },
  { type: "Entity", text: "Plot 7" },
  { code: "#VALUE!", message: "" },
  {},
];

function anyCell(): unknown {
  switch (draw(10)) {
    case 0:
      return pick(odd);
    case 1:
      return pick(wrapped);
    case 2:
      return pick(notes);
    case 3:
      return pick(names);
    case 4:
      return pick(words);
    case 5:
      return 45_400 + draw(90);
    default:
      return 20 + draw(400) / 10;
  }
}

/** An amount in a column, and alone what options take: a change, a share, a number of plants. */
function likely(height: number): number {
  return height === 1 ? pick([0.2, 0.25, 0.8, 2, 4, 8, 812]) : 20 + draw(400) / 10;
}

/** Of the calls of one list most columns are as tall, so that not all are refused for their heights. */
function anyArgument(height: number): unknown {
  switch (draw(12)) {
    case 0:
      return pick(wrapped);
    case 1:
      return pick(words);
    case 2:
      return anyCell();
    case 3:
      return pick([[], [[]], [[], []], [1, 2, 3], [[1], [2, 3]], [[anyCell(), anyCell(), anyCell()]]]);
    case 4:
      return Array.from({ length: draw(6) }, () => Array.from({ length: 1 + draw(4) }, anyCell));
    case 5:
      return Array.from({ length: height }, (_, at) => [pick(["Straw", "Bare soil", `B${at}`])]);
    default:
      return Array.from({ length: height }, () => [draw(5) === 0 ? anyCell() : likely(height)]);
  }
}

/** What Excel can show without loss: finite numbers, texts, truth values. */
function isShowable(output: unknown): boolean {
  if (typeof output === "number") return Number.isFinite(output);
  if (typeof output === "string" || typeof output === "boolean") return true;
  const { code, message } = (output ?? {}) as { code?: unknown; message?: unknown };
  return typeof code === "string" && isSentence(message);
}

function isSentence(message: unknown): boolean {
  return (
    typeof message === "string" && /^[^a-z].*[.?]$/su.test(message) && !/(?<!is )undefined|NaN|\[object/.test(message)
  );
}

/** How often each function gave a block: a test that only meets refusals would prove little. */
const answered = new Map<Id, number>();

function wrongWith(id: Id, given: readonly unknown[]): string | null {
  const start = performance.now();
  try {
    const reply = replyOf(id, ...given);
    if (performance.now() - start > 1500) return "slow";
    if (!Array.isArray(reply))
      return isSentence(reply.message) && /^#(VALUE!|N\/A)$/.test(reply.code) ? null : `${reply.code} ${reply.message}`;
    answered.set(id, (answered.get(id) ?? 0) + 1);
    const [first] = reply;
    const isBlock = first !== undefined && first.length > 0 && reply.every((row) => row.length === first.length);
    if (!isBlock) return "no block";
    return reply.flat().every(isShowable) ? null : "a cell that cannot be shown";
  } catch (thrown) {
    return String((thrown as Error).stack ?? thrown).slice(0, 400);
  }
}

it("any arguments give a block of cells or a refusal with a sentence (200 000 lists)", () => {
  const wrong: unknown[] = [];
  for (let at = 0; at < 200_000 && wrong.length < 5; at++) {
    const id = pick(ids);
    const most = theDesk.parameters(id)?.length ?? 0;
    const height = draw(3) === 0 ? 1 : 1 + draw(9);
    const given = Array.from({ length: draw(most + 1) }, () => anyArgument(height));
    const found = wrongWith(id, given);
    if (found !== null) wrong.push([id, found, JSON.stringify(given)]);
  }
  expect(wrong).toEqual([]);
  expect(ids.filter((id) => (answered.get(id) ?? 0) < 20)).toEqual([]);
}, 300_000);
