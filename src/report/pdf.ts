/**
 * Finishes a PDF as Chromium prints it, so that the same report gives the same bytes: dates become the visit's, node
 * names are counted from one, and the file says who and what it is (title, client, visit, digest of the results) as
 * document information and as XMP. The printed pages themselves are not touched.
 */
import { PdfError, readPdfObjects, writePdf } from "./pdf-objects.js";
import { slimStructure } from "./pdf-structure.js";

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

export function finishPdf(printed: Uint8Array, facts: PdfFacts): Uint8Array {
  const { objects, root, info, size } = readPdfObjects(latin1(printed));
  const catalog = objects.get(root);
  if (catalog === undefined || !/^<<[\s\S]*>>$/.test(catalog)) throw new PdfError("no catalog");
  const nodes = new Map<string, string>();
  const steady = (content: string): string =>
    content.endsWith("endstream") ? content : content.replace(/\(node\d{8}\)/g, (node) => numbered(node, nodes));
  const xmp = Buffer.from(metadata(facts), "utf8");
  const all = slimStructure(objects);
  for (const [number, content] of all) all.set(number, steady(content));
  all.set(info, `<<${information(facts)}>>`);
  all.set(root, `${steady(catalog).slice(0, -2)}\n/Metadata ${size} 0 R>>`);
  all.set(size, `<</Type/Metadata/Subtype/XML/Length ${xmp.length}>>\nstream\n${xmp.toString("latin1")}\nendstream`);
  return writePdf({ objects: all, root, info, size: size + 1 }, facts.digest.slice(0, 32).padEnd(32, "0"));
}

const latin1 = ({ buffer, byteOffset, length }: Uint8Array): string =>
  Buffer.from(buffer, byteOffset, length).toString("latin1");

/** Node names come from a counter of the browser: count them from one in each document. */
function numbered(node: string, nodes: Map<string, string>): string {
  const known = nodes.get(node) ?? `(${String(nodes.size + 1).padStart(6, "0")})`;
  nodes.set(node, known);
  return known;
}

const pdfDate = (iso: string): string => `D:${iso.replaceAll("-", "")}000000+00'00'`;

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
