import { createServer } from "node:http";
import { createServer as createSecureServer } from "node:https";
import { fileURLToPath } from "node:url";
import sirv from "sirv";

const dist = fileURLToPath(new URL("../dist", import.meta.url));

/**
 * Serves the built files to this computer only.
 *
 * @param {number} port 0: any free one
 * @param {import("node:https").ServerOptions} [certificate] with it the address is https
 * @returns {Promise<{ address: string, close: () => void }>} rejects with code EADDRINUSE when the port is taken
 */
export function serve(port, certificate) {
  const files = sirv(dist, { dev: true, setHeaders: allowOtherOrigins });
  /** @type {import("node:http").RequestListener} */
  const answer = (request, response) => {
    if (request.url === "/") response.writeHead(302, { location: "practice/" }).end();
    else files(request, response, () => response.writeHead(404).end("Not found"));
  };
  const server = certificate === undefined ? createServer(answer) : createSecureServer(certificate, answer);
  const scheme = certificate === undefined ? "http" : "https";
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "localhost", () => {
      const bound = server.address();
      const chosen = typeof bound === "object" && bound !== null ? bound.port : port;
      resolve({
        address: `${scheme}://localhost:${chosen}`,
        close: () => server.close(),
      });
    });
  });
}

/**
 * Excel's own page asks for functions.json and functions.js from another origin.
 *
 * @param {import("node:http").ServerResponse} response
 */
function allowOtherOrigins(response) {
  response.setHeader("Access-Control-Allow-Origin", "*");
}
