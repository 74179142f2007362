/** An invented table of a laboratory, as its file would read. */
export const ownTable = `id: rowers
title: Invented rowers of this laboratory
measure: vo2_peak_per_mass
unit: mL/kg/min
kind: percentile-table
role: reference
choice: {vo2_reference: [rowers]}
population: {who: invented rowers, n: 60}
applies: {sex: [female], age_years: [20, 39], exercise_mode: [rowing]}
source: {authors: this laboratory, year: 2026, title: Own clients, where: invented}
verified: own
columns: [age_from, age_to, p10, p50, p90]
values:
  female:
    - [20, 29, 40, 48, 57]
    - [30, 39, 38, 46, 55]
checks:
  - {given: {sex: female, age_years: 25, value: 48, exercise_mode: rowing}, expect: {percentile: 50}, from: "row 1"}
`;
