/**
 * Results as an HL7 FHIR R4 Bundle of Observations (hl7.org/fhir/R4): one a number, with the LOINC code where the
 * catalogue has one and the UCUM code of its unit. The subject is named by pseudonym alone. Texts in, text out.
 */

import { createHash } from "node:crypto";
import type { Quantity } from "../../kernel/measure.js";
import { measureInfo } from "../../kernel/measures.js";
import { titleOf } from "../../kernel/names.js";
import type { Results } from "../../kernel/results.js";
import { toDecimals } from "../../kernel/rounding.js";
import { ucumOf } from "./ucum.js";

const LOINC = "http://loinc.org";
const OWN = "https://waymark.invalid/measure";
const VITAL: readonly string[] = ["8480-6", "8462-4", "8867-4", "40443-4", "8302-2", "29463-7", "39156-5"];
/** Blood pressure panel with all children optional: FHIR's vital signs profile wants both pressures in one Observation. */
const PRESSURE_PANEL = "85354-9";
const PRESSURES = ["systolic_pressure", "diastolic_pressure"] as const;

type Json = Readonly<Record<string, unknown>>;

/** A number with the digits it was recorded with: JSON would drop trailing zeros, and they say how exact it is. */
class Digits {
  constructor(readonly text: string) {}
  toJSON(): string {
    return `#${this.text}#`;
  }
}

/** The whole Bundle, pretty-printed; the same results give the same text. */
export function fhirBundle(visits: readonly Results[]): string {
  const entry = visits.flatMap((results) =>
    observations(results).map((resource) => ({ fullUrl: `urn:uuid:${uuid(String(resource.id))}`, resource })),
  );
  const bundle = { resourceType: "Bundle", type: "collection", ...(entry.length > 0 ? { entry } : {}) };
  return `${JSON.stringify(bundle, null, 2).replace(/"#(-?[\d.]+)#"/g, "$1")}\n`;
}

function observations(results: Results): Json[] {
  const quantities = results.entries.filter((entry): entry is Quantity => entry.kind === "quantity");
  const pressures = PRESSURES.map((id) => quantities.find((q) => q.id === id));
  const [systolic, diastolic] = pressures;
  const panel =
    systolic && diastolic
      ? [
          {
            ...head(results, "blood-pressure", true),
            code: { coding: [{ system: LOINC, code: PRESSURE_PANEL }], text: "Blood pressure" },
            ...when(results),
            component: [systolic, diastolic].map((q) => ({ code: code(q), valueQuantity: value(q) })),
          },
        ]
      : [];
  const others = quantities.filter((q) => panel.length === 0 || !pressures.includes(q));
  return [...panel, ...others.map((q) => observation(results, q))];
}

function observation(results: Results, quantity: Quantity): Json {
  const { origin, note, error } = quantity;
  const notes = [
    note ?? "",
    error?.typical === undefined
      ? ""
      : `typical error ${toDecimals(error.typical, quantity.decimals + 1)} ${quantity.unit} (${error.from})`,
  ].filter((text) => text !== "");
  return {
    ...head(results, quantity.id, VITAL.includes(measureInfo(quantity.id)?.loinc ?? "")),
    code: code(quantity),
    ...when(results),
    valueQuantity: value(quantity),
    ...(origin.kind === "formula" ? { method: { text: origin.formula } } : {}),
    ...(notes.length === 0 ? {} : { note: notes.map((text) => ({ text })) }),
  };
}

const head = (results: Results, id: string, vital: boolean): Json => ({
  resourceType: "Observation",
  id: fhirId(`${results.client}-${results.date}-${results.label ?? "visit"}-${id}`),
  status: "final",
  category: [
    {
      coding: [
        {
          system: "http://terminology.hl7.org/CodeSystem/observation-category",
          code: vital ? "vital-signs" : "procedure",
        },
      ],
    },
  ],
});

const when = (results: Results): Json => ({
  subject: { identifier: { system: "https://waymark.invalid/client", value: results.client } },
  effectiveDateTime: results.date,
});

function code({ id }: Quantity): Json {
  const info = measureInfo(id);
  const own = { system: OWN, code: id };
  return {
    coding: info?.loinc === undefined ? [own] : [{ system: LOINC, code: info.loinc }, own],
    text: titleOf(id),
  };
}

function value(quantity: Quantity): Json {
  const ucum = ucumOf(quantity.unit);
  return {
    value: new Digits(toDecimals(quantity.value, quantity.decimals)),
    unit: quantity.unit,
    ...(ucum === undefined ? {} : { system: "http://unitsofmeasure.org", code: ucum }),
  };
}

/** At most 64 letters, digits, hyphens and points; a longer one keeps its beginning and a digest of the whole. */
const fhirId = (text: string): string => {
  const plain = text.replace(/[^A-Za-z0-9.-]/g, "-");
  return plain.length <= 64 ? plain : `${plain.slice(0, 51)}-${digest(plain).slice(0, 12)}`;
};

const digest = (text: string) => createHash("sha256").update(text).digest("hex");

/** A name-based UUID (RFC 9562, version 8): the same Observation has the same address in every export. */
function uuid(name: string): string {
  const hex = digest(name);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-a${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}
