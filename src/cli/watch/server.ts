/**
 * Serves the watched report to this machine alone: bound to the loopback address, answering only requests that name it,
 * reading only. The page of a report gets one script, which asks for the new text when a file has changed.
 */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import type { Edition } from "../../report/render.js";
import { EDITIONS } from "../editions.js";
import type { Live } from "./live.js";
import { LIVE_SCRIPT } from "./live-script.js";

const LOOPBACK = "127.0.0.1";
const POLICY =
  "default-src 'none'; script-src 'self'; connect-src 'self'; style-src 'unsafe-inline'; font-src data:; img-src data:";

export interface WatchServer {
  readonly address: string;
  /** Tells every open page to ask again. */
  changed(): void;
  close(): Promise<void>;
}

/** Port 0 takes a free one. Rejects when the port is taken. */
export async function serve(live: Live, port: number): Promise<WatchServer> {
  const listeners = new Set<ServerResponse>();
  let version = 0;
  const server: Server = createServer((request, response) => {
    answer(request, response, live, listeners, version).catch((error: unknown) => {
      if (!response.headersSent) send(response, 500, "text/plain", String(error));
    });
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, LOOPBACK, resolve);
  });
  return {
    address: `http://${LOOPBACK}:${(server.address() as AddressInfo).port}`,
    changed() {
      version++;
      for (const listener of listeners) listener.write(`event: changed\ndata: ${version}\n\n`);
    },
    close() {
      for (const listener of listeners) listener.end();
      server.closeAllConnections();
      return new Promise((resolve) => server.close(() => resolve()));
    },
  };
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  live: Live,
  listeners: Set<ServerResponse>,
  version: number,
): Promise<void> {
  const host = (request.headers.host ?? "").replace(/:\d+$/, "");
  if (host !== LOOPBACK && host !== "localhost") return send(response, 403, "text/plain", "only from this machine");
  if (request.method !== "GET") return send(response, 405, "text/plain", "only to look at");
  const url = new URL(request.url ?? "/", `http://${LOOPBACK}`);
  if (url.pathname === "/live.js") return send(response, 200, "text/javascript", LIVE_SCRIPT);
  if (url.pathname === "/events") return listen(response, listeners);
  if (url.pathname === "/") return send(response, 200, "text/html", indexPage(live));
  const [, kind, client, visit] = /^\/(visit|state)\/([^/]+)\/([^/]+)$/.exec(decodeURIComponent(url.pathname)) ?? [];
  const edition = EDITIONS.find((name) => name === (url.searchParams.get("edition") ?? "practitioner"));
  const known = live
    .practice()
    .clients.find((c) => c.id === client)
    ?.visits.find((v) => v.name === visit);
  if (kind === undefined || known === undefined || edition === undefined)
    return send(response, 404, "text/plain", "no such visit");
  const preview = await live.preview(known.path, edition);
  if (kind === "state")
    return send(response, 200, "application/json", JSON.stringify({ ...preview, html: preview.html ?? null, version }));
  const page = preview.html ?? emptyPage(known.path);
  send(response, 200, "text/html", watched(page));
}

function listen(response: ServerResponse, listeners: Set<ServerResponse>): void {
  response.writeHead(200, { "content-type": "text/event-stream", "cache-control": "no-store" });
  response.write("retry: 500\n\n");
  listeners.add(response);
  response.on("close", () => listeners.delete(response));
}

function send(response: ServerResponse, status: number, type: string, body: string): void {
  response.writeHead(status, {
    "content-type": `${type}; charset=utf-8`,
    "cache-control": "no-store",
    "content-security-policy": POLICY,
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
  });
  response.end(body);
}

/** The report's own policy forbids scripts; the answer's header takes its place here, and lets in one. */
const watched = (html: string): string =>
  html
    .replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, "")
    .replace("</head>", `<script src="/live.js" defer></script>\n</head>`);

const escaped = (text: string) => text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

const emptyPage = (path: string) =>
  `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>${escaped(path)}</title><style></style></head><body><main><p>There is no report of ${escaped(path)} yet: its files hold an error.</p></main></body></html>`;

function indexPage(live: Live): string {
  const link = (id: string, visit: string, edition: Edition) =>
    `<a href="/visit/${encodeURIComponent(id)}/${encodeURIComponent(visit)}?edition=${edition}">${edition}</a>`;
  const rows = live
    .practice()
    .clients.flatMap((client) =>
      client.visits.map(
        ({ name }) =>
          `<tr><th scope="row">${escaped(client.id)}</th><td>${escaped(name)}</td><td>${EDITIONS.map((e) => link(client.id, name, e)).join(" · ")}</td></tr>`,
      ),
    );
  return `<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Visits</title><style>body{font:16px/1.5 system-ui,sans-serif;max-width:44rem;margin:2rem auto;padding:0 1rem}th,td{text-align:left;padding:.2rem 1rem .2rem 0}</style></head><body><main><h1>Visits</h1><table>${rows.join("")}</table></main></body></html>`;
}
