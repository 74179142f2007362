/**
 * What of a visit's folder could tell who the client is, besides the words of its session: names of files, the birth
 * date in a name or a remark, and what cameras and scanners write into pictures. Hints, never errors.
 */
import type { Diagnostic } from "../kernel/diagnostic.js";
import { personal } from "../validate/privacy.js";
import { readFile } from "./files.js";
import type { Listing, Practice, VisitFolder } from "./practice.js";

const WRITTEN = /^(\..*|session\.yaml|results\.yaml|index\.html|report.*\.(html|pdf))$/;
const PICTURE = /\.(jpe?g|png|tiff?|heic|gif|bmp|webp|dcm)$/i;
/** Marks of what a picture's own notes hold: place, author, patient. Standard names of EXIF, XMP, PNG and DICOM. */
const NOTES: readonly (readonly [mark: RegExp, what: string])[] = [
  [/^.{128}DICM/s, "the patient's name and birth date, as DICOM pictures do"],
  [/GPSLatitude|exif:GPS/i, "the place where the picture was taken"],
  [/\b(Artist|Author|dc:creator|CameraOwnerName)\b/i, "the name of an author or owner"],
  [/[^\s@"<>]{2,64}@[a-z0-9-]{2,63}\.[a-z]{2,}/i, "an e-mail address"],
];
const LOOKED_AT = 300_000;

export function personalFiles(
  practice: Practice,
  visit: VisitFolder,
  files: Listing,
  birthDate: string | undefined,
  remarks: readonly string[],
): Diagnostic[] {
  const found: Diagnostic[] = [];
  const forms = birthDate === undefined ? [] : formsOf(birthDate);
  const report = (file: string, what: string, fix: string) =>
    found.push({
      code: "looks-personal",
      severity: "warning",
      at: { file: `${visit.path}/${file}` },
      found: what,
      expected: "a record without names, contact data and birth dates in sight",
      why: "the folder is archived and shared under a pseudonym",
      fix,
    });
  for (const { name, folder } of files) {
    if (folder || WRITTEN.test(name)) continue;
    const words = name
      .replace(/\.\w+$/, "")
      .replace(/[_.+-]+/g, " ")
      .replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2");
    const hit = personal(/@/.test(name) ? name : words, false);
    if (hit)
      report(
        name,
        `the file name holds ${hit.text}, which looks like ${hit.what}`,
        "rename the file, and its name in the session",
      );
    else if (forms.some((form) => name.includes(form)))
      report(name, "the file name holds the client's birth date", "rename the file, and its name in the session");
    if (PICTURE.test(name)) {
      const noted = notesIn(practice, `${visit.path}/${name}`);
      if (noted) report(name, `the picture holds ${noted}`, "save it again without its notes, or keep it elsewhere");
    }
  }
  if (remarks.some((remark) => forms.some((form) => remark.includes(form))))
    report("session.yaml", "a remark holds the client's birth date", "take it out: client.yaml has it");
  return found;
}

function notesIn(practice: Practice, path: string): string | undefined {
  const { bytes } = readFile(practice.root, path);
  const text = Buffer.from(bytes.subarray(0, LOOKED_AT)).toString("latin1");
  return NOTES.find(([mark]) => mark.test(text))?.[1];
}

/** 1984-09-14, 14.09.1984, 14.9.1984, 14/09/1984, 09/14/1984, 19840914, 14091984. */
function formsOf(date: string): string[] {
  const [year = "", month = "", day = ""] = date.split("-");
  if (day === "") return [];
  return [
    date,
    `${day}.${month}.${year}`,
    `${Number(day)}.${Number(month)}.${year}`,
    `${day}/${month}/${year}`,
    `${month}/${day}/${year}`,
    `${year}${month}${day}`,
    `${day}${month}${year}`,
  ];
}
