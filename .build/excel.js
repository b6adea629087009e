import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";
import { serve } from "./serve.js";

const [manifest, sideload] = ["../dist/manifest.xml", "../node_modules/office-addin-dev-settings/cli.js"].map((path) =>
  fileURLToPath(new URL(path, import.meta.url)),
);

if (process.platform === "win32" || process.platform === "darwin") await openExcel();
else {
  console.log(
    "Excel runs on Windows and Mac; elsewhere host the built files on an https address, build with --env address=… " +
      "and upload dist/manifest.xml in Excel on the web (Add-ins, More Add-ins, Upload My Add-in).",
  );
}

/** Excel loads add-ins over https only, so the computer's owner is asked to trust a certificate for localhost. */
async function openExcel() {
  const { getHttpsServerOptions } = await import("office-addin-dev-certs");
  const { address } = await serve(3000, await getHttpsServerOptions());
  console.log(`Serving ${address} for Excel (Ctrl+C ends it).`);
  spawn(process.execPath, [sideload, "sideload", manifest, "--app", "Excel"], {
    stdio: "inherit",
  });
}
