/**
 * Finishes a PDF as Chromium prints it, so that the same report gives the same bytes: dates become the visit's, node
 * numbers are counted from one, and an update at the end adds who and what the document is (title, client, visit,
 * digest of the results) as document information and as XMP. The printed pages themselves are not touched.
 */
export interface PdfFacts {
  readonly title: string;
  readonly client: string;
  /** ISO date of the visit. */
  readonly visit: string;
  /** SHA-256 of results.yaml, hex. */
  readonly digest: string;
  readonly language: string;
  readonly laboratory: string;
}

export class PdfError extends Error {
  constructor(reason: string) {
    super(`the printed PDF has an unexpected shape: ${reason}`);
    this.name = "PdfError";
  }
}

export function finishPdf(printed: Uint8Array, facts: PdfFacts): Uint8Array {
  const text = steady(Buffer.from(printed).toString("latin1"), facts);
  const trailer =
    /trailer\s*<<\/Size (\d+)\s*\/Root (\d+) 0 R\s*\/Info (\d+) 0 R>>\s*startxref\s+(\d+)\s+%%EOF\s*$/.exec(text);
  if (!trailer) throw new PdfError("no trailer with root and information");
  const [size, root, info, previous] = trailer.slice(1).map(Number) as [number, number, number, number];
  const catalog = new RegExp(`\\n${root} 0 obj\\s*<<([\\s\\S]*?)>>\\s*endobj`).exec(text)?.[1];
  if (catalog === undefined) throw new PdfError("no catalog");

  const xmp = Buffer.from(metadata(facts), "utf8");
  const objects: readonly (readonly [number, string])[] = [
    [info, `<<${information(facts)}>>`],
    [root, `<<${catalog}\n/Metadata ${size} 0 R>>`],
    [size, `<</Type /Metadata\n/Subtype /XML\n/Length ${xmp.length}>>\nstream\n${xmp.toString("latin1")}\nendstream`],
  ];
  let body = text.endsWith("\n") ? text : `${text}\n`;
  const entries: string[] = [];
  for (const [number, content] of objects) {
    entries.push(`${number} 1\n${String(body.length).padStart(10, "0")} 00000 n \n`);
    body += `${number} 0 obj\n${content}\nendobj\n`;
  }
  const id = facts.digest.slice(0, 32).padEnd(32, "0");
  const update = `xref\n${entries.join("")}trailer\n<</Size ${size + 1}\n/Root ${root} 0 R\n/Info ${info} 0 R\n/Prev ${previous}\n/ID [<${id}> <${id}>]>>\nstartxref\n${body.length}\n%%EOF\n`;
  return Uint8Array.from(Buffer.from(body + update, "latin1"));
}

const pdfDate = (iso: string): string => `D:${iso.replaceAll("-", "")}000000+00'00'`;

/** Replaces what differs between two prints of one document by text of the same length, so that offsets still hold. */
function steady(text: string, facts: PdfFacts): string {
  const nodes = new Map<string, string>();
  return text
    .replace(/\/(CreationDate|ModDate) \(D:[^)]*\)/g, (found, key: string) => {
      const dated = `/${key} (${pdfDate(facts.visit)})`;
      if (dated.length !== found.length) throw new PdfError(`a date of another length: ${found}`);
      return dated;
    })
    .replace(/\(node(\d{8})\)/g, (_, node: string) => {
      const known = nodes.get(node) ?? String(nodes.size + 1).padStart(8, "0");
      nodes.set(node, known);
      return `(node${known})`;
    });
}

/** Any text as a PDF string: UTF-16 with its mark, in hexadecimal. */
function pdfText(text: string): string {
  return `<${Buffer.from(`\uFEFF${text}`, "utf16le").swap16().toString("hex").toUpperCase()}>`;
}

const information = (facts: PdfFacts): string =>
  [
    `/Title ${pdfText(facts.title)}`,
    `/Author ${pdfText(facts.laboratory)}`,
    `/Subject ${pdfText(`${facts.client} ${facts.visit}`)}`,
    `/Creator (Waymark)`,
    `/Producer (Skia/PDF)`,
    `/CreationDate (${pdfDate(facts.visit)})`,
    `/ModDate (${pdfDate(facts.visit)})`,
    `/WaymarkClient ${pdfText(facts.client)}`,
    `/WaymarkVisit (${facts.visit})`,
    `/WaymarkResults (${facts.digest})`,
  ].join("\n");

const xmlText = (text: string): string =>
  text.replace(/[<>&"]/g, (sign) => ({ "<": "&lt;", ">": "&gt;", "&": "&amp;", '"': "&quot;" })[sign] as string);

const metadata = (facts: PdfFacts): string => `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${xmlText(facts.title)}</rdf:li></rdf:Alt></dc:title>
<dc:creator><rdf:Seq><rdf:li>${xmlText(facts.laboratory)}</rdf:li></rdf:Seq></dc:creator>
<dc:language><rdf:Bag><rdf:li>${xmlText(facts.language)}</rdf:li></rdf:Bag></dc:language>
<dc:identifier>${xmlText(`${facts.client} ${facts.visit} ${facts.digest}`)}</dc:identifier>
<xmp:CreateDate>${facts.visit}</xmp:CreateDate>
</rdf:Description></rdf:RDF></x:xmpmeta>
<?xpacket end="r"?>`;
