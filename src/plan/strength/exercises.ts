/** Exercises by movement and by what they need; the first that fits a client is taken. */
import type { MeasureId } from "../../kernel/measures.js";
import type { avoids } from "../settings.js";

type Strain = Parameters<typeof avoids>[1];
export interface Exercise {
  readonly name: string;
  readonly needs: readonly string[];
  readonly strains: readonly Strain[];
  readonly maximum?: readonly MeasureId[];
}
/** One exercise a movement; the first that fits is taken. Large groups and many joints first (2009 stand). */
export const MOVEMENTS: readonly (readonly Exercise[])[] = [
  [
    { name: "Back squat", needs: ["barbell"], strains: ["deep knee bending", "heavy lifting"] },
    {
      name: "Leg press",
      needs: ["machines"],
      strains: ["heavy lifting"],
      maximum: ["leg_press_1rm", "leg_press_1rm_estimated"],
    },
    { name: "Step-up with a load", needs: ["step or box", "rucksack"], strains: ["load carriage"] },
    { name: "Step-up", needs: ["step or box"], strains: [] },
    { name: "Squat to a chair", needs: [], strains: ["deep knee bending"] },
    { name: "Half squat against a wall", needs: [], strains: [] },
  ],
  [
    { name: "Deadlift", needs: ["barbell"], strains: ["heavy lifting"] },
    { name: "Hip hinge with weights", needs: ["dumbbells"], strains: ["heavy lifting"] },
    { name: "Hip hinge with a kettlebell", needs: ["kettlebell"], strains: ["heavy lifting"] },
    { name: "Bridge on one leg", needs: [], strains: [] },
  ],
  [
    {
      name: "Bench press",
      needs: ["barbell"],
      strains: ["heavy lifting"],
      maximum: ["bench_press_1rm", "bench_press_1rm_estimated"],
    },
    { name: "Press with dumbbells, lying", needs: ["dumbbells"], strains: [] },
    { name: "Push-up, on a raised edge if needed", needs: [], strains: [] },
  ],
  [
    { name: "Pull-up, with a band if needed", needs: ["pull-up bar"], strains: ["overhead lifting"] },
    { name: "Row with weights", needs: ["dumbbells"], strains: [] },
    { name: "Row with a band", needs: ["bands"], strains: [] },
    { name: "Row with a rucksack", needs: ["rucksack"], strains: ["load carriage"] },
  ],
  [
    { name: "Carry in both hands", needs: ["dumbbells"], strains: ["load carriage"] },
    { name: "Plank", needs: [], strains: [] },
  ],
  [{ name: "Calf raise on one leg", needs: [], strains: [] }],
];
