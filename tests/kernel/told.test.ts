/** Recorded sentences told in another language. */
import { describe, expect, it } from "vitest";
import { speechOf } from "../../src/kernel/speech.js";
import { tellerOf } from "../../src/kernel/told.js";
import { wordsOf } from "../report/assets.js";

const german = speechOf(wordsOf("de"));
const sentences = {
  "{measure} was not measured": "{measure}: nicht gemessen",
  "{measure} is not given: {because}": "{measure} fehlt: {because}",
  "{value} is above {limit}": "{value} liegt über {limit}",
  "it says: {=words}": "dort steht: {=words}",
  "after {~work}": "nach {~work}",
  "one cuff": "eine Manschette",
  "one arm": "ein Arm",
  "one cuff, worn": "Manschette am Arm",
  "{n} of {all} readings": "{n} von {all} Messungen",
};
const tell = tellerOf(sentences, { ...german, decimalSign: "," });
const told = (text: string) => tell(text, (english) => `<${english}>`);

describe("a recorded sentence", () => {
  it("is told by its pattern, what stands in its places too", () => {
    expect(told("Body mass was not measured")).toBe("Körpermasse: nicht gemessen");
    expect(told("body mass is not given: stature was not measured.")).toBe(
      "Körpermasse fehlt: Körpergröße: nicht gemessen.",
    );
    expect(told("1.16 is above 1.10")).toBe("1,16 liegt über 1,10");
    expect(told("One cuff, one arm and 3 of 4 readings")).toBe("Eine Manschette, ein Arm und 3 von 4 Messungen");
  });
  it("has the language's numbers and dates", () => {
    expect(told("-3.5 mL/kg/min")).toBe("−3,5 mL/kg/min");
    expect(told("37, 37.5, 38 kg")).toBe("37; 37,5; 38 kg");
    expect(told("2026-03-02")).toBe("2. März 2026");
    expect(told("2 March 2026")).toBe("2. März 2026");
    expect(told("session.yaml rest.readings")).toBe("session.yaml rest.readings");
  });
  it("stays English and is marked where nothing fits, and only there", () => {
    expect(told("Nobody knows this sentence.")).toBe("<Nobody knows this sentence>.");
    expect(told("One cuff; nobody knows this.")).toBe("Eine Manschette; <nobody knows this>.");
    expect(told("half of 4 readings")).toBe("<half> von 4 Messungen");
  });
  it("is told piece by piece, but never cut within brackets or within a name that holds a comma", () => {
    expect(told("One cuff · kaminsky-2022: one arm")).toBe("Eine Manschette · kaminsky-2022: ein Arm");
    expect(told("it holds (one cuff; one arm); one arm")).toBe("<it holds> (eine Manschette; ein Arm); ein Arm");
    expect(told("one arm, one cuff, worn and one arm")).toBe("ein Arm, Manschette am Arm und ein Arm");
  });
  it("keeps what somebody typed, and marks a citation", () => {
    expect(told("it says: 3.5 is above all")).toBe("dort steht: 3.5 is above all");
    expect(told("after Miller and others 2015")).toBe("nach <Miller and others 2015>");
  });
  it("is not slow for a text made to be", () => {
    const from = process.cpuUsage().user;
    told(`${"is above is not given: was not measured; ".repeat(90)}end`);
    expect(process.cpuUsage(undefined).user - from).toBeLessThan(400_000);
  });
  it("is the recorded one in English", () => {
    expect(speechOf(wordsOf("en")).told("1.16 is above 1.10")).toBe("1.16 is above 1.10");
  });
});
