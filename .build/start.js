import { openPage } from "./openPage.js";
import { serve } from "./serve.js";

const wanted = Number(process.env.PORT ?? 4173);
const { address } = await serveAt(wanted, wanted + 20);
console.log(`The practice sheet: ${address}/practice/   (Ctrl+C ends it)`);
if (process.env.BROWSER !== "none") openPage(`${address}/practice/`);

/** @type {(port: number, last: number) => ReturnType<typeof serve>} */
async function serveAt(port, last) {
  try {
    return await serve(port);
  } catch (trouble) {
    const taken = trouble instanceof Error && "code" in trouble && trouble.code === "EADDRINUSE";
    if (!taken || port >= last) throw trouble;
    return serveAt(port + 1, last);
  }
}
