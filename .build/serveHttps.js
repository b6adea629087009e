import { existsSync, mkdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { serve } from "./serve.js";

const folder = fileURLToPath(new URL("../node_modules/.cache/certificates/", import.meta.url));
const [authority, certificate, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((name) => folder + name);

if (!existsSync(certificate)) await generate();
const { address } = await serve(Number(process.env.PORT ?? 3000), {
  cert: readFileSync(certificate),
  key: readFileSync(key),
});
console.log(
  `${address}/taskpane.html   (Ctrl+C ends it)\n` +
    `The certificate was made on this computer. A browser trusts it once ${authority} is among its authorities.`,
);

/** Made here and trusted nowhere: `npm run excel` also asks the computer's owner to trust it. */
async function generate() {
  const { generateCertificates } = await import("office-addin-dev-certs");
  mkdirSync(folder, { recursive: true });
  await generateCertificates(authority, certificate, key, 365);
}
