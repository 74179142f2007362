/** How much longer than in `npm test` random tests run: FUZZ=20 for `npm run fuzz`. */
export const FUZZ_RUNS = Math.max(1, Number(process.env.FUZZ ?? 1) || 1);
