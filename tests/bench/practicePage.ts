import { existsSync, readFileSync } from "node:fs";
import { type Browser, chromium, type Page } from "playwright-core";
import type { Entry } from "../../src/host/sheet";
import { excelFile, sheetPart } from "../files/excelFile";
import { ratios, spreadOf } from "./contest";
import { figure, heading, line, say } from "./report";

const ROUNDS = 15;
const FORMULAS = 1000;
const ROWS = 100_000;

/**
 * What a grower waits for in the practice sheet, in a browser: times by the clock, as the browser tells no other.
 *
 * @param address where the built pages are served
 * @param program the browser's program file; empty where there is none
 */
export async function practicePage(address: string, program: string): Promise<void> {
  heading("The practice sheet (in a browser; by the clock)");
  if (program === "" || !existsSync("dist/practice")) {
    say("skipped: it needs Chrome, Edge or Chromium, and npm run build");
    return;
  }
  const browser = await chromium.launch({ executablePath: program, args: ["--disable-gpu"] });
  say(`browser ${browser.version()}`);
  await start(browser);
  const page = await browser.newPage({ viewport: { width: 1366, height: 768 }, locale: "en-US" });
  await page.goto(`${address}/practice/`);
  await page.locator("#starting").waitFor({ state: "detached", timeout: 90_000 });
  await explanation(page);
  await recalculation(page);
  await largeFile(page);
  await browser.close();
}

/** The worksheet functions' file from text to associated functions, in a page that holds nothing else. */
async function start(browser: Browser): Promise<void> {
  const page = await browser.newPage();
  const times = await page.evaluate(
    ([source, count]) => {
      const timed = (text: string) => {
        const begin = performance.now();
        new Function("CustomFunctions", text)({ associate: () => undefined });
        return performance.now() - begin;
      };
      // a remark of its own in each round: a browser keeps what it has compiled
      const rounds = Array.from({ length: count + 1 }, (_, at) => `//${at}\n`);
      return rounds.map((remark) => [timed(remark + source), timed(`${remark}JSON.parse("1")`)]).slice(1);
    },
    [readFileSync("dist/functions.js", "utf8"), ROUNDS] as const,
  );
  const own = times.map(([first = 0]) => first);
  figure("functions.js, parsed and associated", spreadOf(own).median, "ms");
  await page.close();
}

/** From a cell's choice to its explanation on screen, beside that of a cell without one. */
async function explanation(page: Page): Promise<void> {
  const times: number[][] = [];
  for (let round = 0; round <= ROUNDS; round += 1) {
    const explained = await untilShown(page, "H4", ".finding");
    const other = await untilShown(page, "L40", ".start");
    times.push([explained, other]);
  }
  report("from choosing a cell to its explanation / to the view of an empty cell", times.slice(1));
}

/** Milliseconds from the choice of a cell of the trial until a part of the pane stands there. */
function untilShown(page: Page, address: string, part: string): Promise<number> {
  return page.evaluate(
    ([cell, wanted]) =>
      new Promise<number>((resolve) => {
        const pane = document.querySelector("#pane");
        const begin = performance.now();
        const look = () => {
          const shown = pane?.querySelector<HTMLElement>(wanted);
          if (shown?.offsetParent) resolve(performance.now() - begin);
          else requestAnimationFrame(look);
        };
        void fairbedPractice.port.select("The trial", cell).then(look);
      }),
    [address, part] as const,
  );
}

/** A thousand of our formulas over ranges that all hold one cell, beside a thousand sums of the same cells. */
async function recalculation(page: Page): Promise<void> {
  const sheets = [
    ["Ours", "=FAIRBED.COMPARETWO('The trial'!$B$1:$B$9,'The trial'!$C$1:$C$9)+$A$1"],
    ["Sums", "=SUM('The trial'!$B$1:$C$9)+$A$1"],
  ] as const;
  for (const [sheet, formula] of sheets) await fillSheet(page, sheet, formula);
  const times: number[][] = [];
  for (let round = 0; round <= ROUNDS; round += 1) {
    const row: number[] = [];
    for (const [sheet] of sheets) row.push(await untilSettled(page, sheet, round));
    times.push(row);
  }
  report(`${FORMULAS} COMPARETWO worked out anew / ${FORMULAS} SUM`, times.slice(1));
}

async function fillSheet(page: Page, sheet: string, formula: string): Promise<void> {
  await page.evaluate(
    async ([name, content, count]) => {
      fairbedPractice.addSheet(name);
      const entries: Entry[] = Array.from({ length: count }, (_, at) => ({
        sheet: name,
        address: `B${at + 1}`,
        content,
        format: "General",
      }));
      await fairbedPractice.port.write(entries, true);
      await fairbedPractice.settled();
    },
    [sheet, formula, FORMULAS] as const,
  );
}

function untilSettled(page: Page, sheet: string, content: number): Promise<number> {
  return page.evaluate(
    async ([name, entered]) => {
      const begin = performance.now();
      await fairbedPractice.put(name, "A1", entered);
      return performance.now() - begin;
    },
    [sheet, content] as const,
  );
}

/** How long the page stands still at a stretch while a large file is opened, of the whole time that takes. */
async function largeFile(page: Page): Promise<void> {
  const rows = Array.from(
    { length: ROWS },
    (_, at) => `<row r="${at + 1}"><c r="A${at + 1}"><v>${at}</v></c><c r="B${at + 1}"><v>1.5</v></c></row>`,
  );
  const buffer = Buffer.from(excelFile({ sheets: [["S", sheetPart(rows.join(""))]] }));
  await page.evaluate(() => {
    const clock = { last: performance.now(), longest: 0, begin: performance.now() };
    setInterval(() => {
      const now = performance.now();
      clock.longest = Math.max(clock.longest, now - clock.last);
      clock.last = now;
    }, 4);
    Object.assign(globalThis, { clock });
  });
  page.once("dialog", (dialog) => void dialog.accept());
  await page.locator("#file-choice").setInputFiles({ name: "large.xlsx", mimeType: "", buffer });
  await page.locator("#file-name", { hasText: "large.xlsx" }).waitFor({ timeout: 90_000 });
  const [longest, whole] = await page.evaluate(() => {
    const { clock } = globalThis as unknown as { clock: { longest: number; begin: number } };
    return [clock.longest, performance.now() - clock.begin] as const;
  });
  figure(`opening ${ROWS} rows`, whole, "ms");
  figure("the longest stretch of it in which the page stands still", longest, "ms");
}

function report(what: string, times: readonly (readonly number[])[]): void {
  const [ratio] = ratios(times);
  if (ratio !== undefined) line(what, ratio);
  figure(what.split(" / ")[0] ?? what, spreadOf(times.map(([own = 0]) => own)).median, "ms");
}
