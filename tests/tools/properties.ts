/**
 * Properties with one seed, so that a test that passed passes again on the same code; `npm run fuzz` draws anew each time
 * and prints the seed of what failed. Tests take fast-check from here.
 */
import fc from "fast-check";

if (process.env.FUZZ === undefined) fc.configureGlobal({ seed: 20_260_302 });

export default fc;
