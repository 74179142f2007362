/** The chain behind one number as a page of its own: no script, no outside request, folds that print open. */
import type { Link } from "./chain.js";

export function chainPage(link: Link, visit: string): string {
  const title = `${link.title}: ${link.found}`;
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escaped(title)}</title>
<style>
body { font: 16px/1.5 Georgia, serif; max-width: 46rem; margin: 2rem auto; padding: 0 1rem; color: #1d2327; background: #fff; }
h1 { font-size: 1.4rem; line-height: 1.3; }
dl { display: grid; grid-template-columns: 6rem 1fr; gap: .15rem 1rem; margin: .4rem 0 .8rem; }
dt { color: #55606a; } dd { margin: 0; overflow-wrap: anywhere; }
details { border-left: 1px solid #b9c2c9; padding-left: 1rem; margin: .5rem 0; }
summary { cursor: pointer; font-variant-numeric: tabular-nums; }
.from { color: #55606a; }
@media print { body { margin: 0; max-width: none; } }
</style>
</head>
<body>
<main>
<p class="from">${escaped(visit)}</p>
<h1>${escaped(title)}</h1>
${facts(link)}
${link.inputs.length === 0 ? "" : `<h2>From</h2>\n${link.inputs.map((input) => fold(input)).join("\n")}`}
</main>
</body>
</html>
`;
}

const fold = (link: Link): string =>
  `<details open><summary>${escaped(link.title)}: <strong>${escaped(link.found)}</strong></summary>
${facts(link)}
${link.inputs.map(fold).join("\n")}
</details>`;

function facts(link: Link): string {
  const rows: [string, string | undefined][] = [
    ["because", link.because],
    ["from", link.key && [link.key, link.at].filter(Boolean).join(", ")],
    ["formula", link.formula && [link.formula.name, link.formula.equation].filter(Boolean).join(": ")],
    ["source", link.formula?.source],
    ["checked", link.formula?.check],
    ...link.given.map((given): [string, string] => [
      "with",
      `${given.name}: ${given.text}${given.at ? ` (${given.at})` : ""}`,
    ]),
    ...(link.read ?? []).map(({ key, at }): [string, string] => ["read in", `${key}, ${at}`]),
    ["error", link.error],
    ...link.norms.map((norm): [string, string] => ["norm", norm]),
    ...link.remarks.map((remark): [string, string] => ["remark", remark]),
  ];
  const told = rows.flatMap(([name, text]) => (text ? [`<dt>${name}</dt><dd>${escaped(text)}</dd>`] : []));
  return told.length === 0 ? "" : `<dl>${told.join("")}</dl>`;
}

const escaped = (text: string): string => text.replace(/[&<>"']/g, (c) => `&#${c.charCodeAt(0)};`);
