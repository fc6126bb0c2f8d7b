/** Lowest values of the grades 4, 3, 2 and 1. */
type Steps = readonly [four: number, three: number, two: number, one: number];

/**
 * ISO/IEC 15416 by the table in handbook section 5.1 (secondary). What depends on paper and heat
 * (symbol contrast, reflectance) is not simulated, and has no row.
 */
export const GRADES = {
  decodability: [0.62, 0.5, 0.37, 0.25],
  modulation: [0.7, 0.6, 0.5, 0.4],
  defects: [0.15, 0.2, 0.25, 0.3],
  // Of matrix codes, ISO/IEC 15415, handbook section 5.2: the first two secondary, the others from memory.
  moduleModulation: [0.5, 0.4, 0.3, 0.2],
  unusedCorrection: [0.62, 0.5, 0.37, 0.25],
  axial: [0.06, 0.08, 0.1, 0.12],
  gridOff: [0.38, 0.5, 0.63, 0.75],
} as const satisfies Record<string, Steps>;

/** Of these, less is better. */
const FALLING: readonly (keyof typeof GRADES)[] = ['defects', 'axial', 'gridOff'];

/**
 * A grade from 0 to 4 with one decimal, as the edition of 2016 gives them: between the steps in equal parts (secondary). Simulated: no verifier
 * measured anything.
 */
export function gradeOf(parameter: keyof typeof GRADES, value: number): number {
  const steps = GRADES[parameter];
  const rising = !FALLING.includes(parameter);
  const better = (a: number, b: number): boolean => (rising ? a >= b : a <= b);
  if (better(value, steps[0])) return 4;
  const floor = rising ? 0 : 2 * steps[3] - steps[2];
  const all = [...steps, floor];
  for (let grade = 3; grade >= 0; grade--) {
    const [low, high] = [all[4 - grade] ?? floor, all[3 - grade] ?? floor];
    if (better(value, low)) return Math.floor((grade + (value - low) / (high - low)) * 10 + 1e-9) / 10;
  }
  return 0;
}
