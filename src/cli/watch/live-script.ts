/** The script that the watched page runs, and only that page: a report in a file holds none. */
export const LIVE_SCRIPT = `"use strict";
(() => {
  const state = "/state" + location.pathname.slice("/visit".length) + location.search;
  const panel = document.createElement("aside");
  panel.id = "live";
  panel.setAttribute("role", "status");
  panel.style.cssText = "position:fixed;left:0;right:0;bottom:0;max-height:45vh;overflow:auto;background:#fff;color:#1a1a1a;" +
    "border-top:2px solid #a8431f;font:13px/1.45 ui-monospace,monospace;padding:8px 16px;z-index:9;display:none";
  document.body.append(panel);

  // What the reader looks at stays where it is, even when lines above it come or go.
  const anchor = () => {
    for (const element of document.querySelectorAll("main [id]")) {
      const { top } = element.getBoundingClientRect();
      if (top >= 0 && top < innerHeight) return { id: element.id, top };
    }
    return undefined;
  };
  const show = (html) => {
    const next = new DOMParser().parseFromString(html, "text/html");
    const held = anchor();
    const at = scrollY;
    const open = [...document.querySelectorAll("details")].map((d) => d.open);
    document.title = next.title;
    const [old, now] = [document.querySelector("style"), next.querySelector("style")];
    if (old && now && old.textContent !== now.textContent) old.textContent = now.textContent;
    document.body.className = next.body.className;
    document.body.replaceChildren(...next.body.childNodes, panel);
    document.querySelectorAll("details").forEach((d, i) => { if (open[i]) d.open = true; });
    scrollTo({ top: at, behavior: "instant" });
    const moved = held && document.getElementById(held.id);
    if (moved) scrollBy({ top: moved.getBoundingClientRect().top - held.top, behavior: "instant" });
  };
  const tell = ({ summary, problems, html, noReport }) => {
    panel.replaceChildren();
    panel.style.display = problems === "" ? "none" : "block";
    if (problems === "") return;
    const head = document.createElement("strong");
    head.textContent = summary + (html === null && !noReport ? " The report above is the last one without errors." : "");
    const body = document.createElement("pre");
    body.textContent = problems;
    body.style.cssText = "white-space:pre-wrap;margin:8px 0";
    panel.append(head, body);
  };
  let asked = 0;
  const refresh = async () => {
    const mine = ++asked;
    const answer = await (await fetch(state)).json();
    if (mine !== asked) return;
    if (answer.html !== null) show(answer.html);
    tell(answer);
    document.documentElement.dataset.version = answer.version;
  };
  const events = new EventSource("/events");
  events.addEventListener("changed", refresh);
  events.onerror = () => tell({ summary: "waymark watch has ended.", problems: "Start it again to see further changes.", html: "" });
  events.onopen = refresh;
})();
`;
