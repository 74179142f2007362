/** A small seeded source of chance (splitmix-style increment, murmur finaliser): the same seed gives the same test everywhere. */
export interface Chance {
  /** Uniform in [0, 1). */
  uniform(): number;
  /** Uniform in [low, high). */
  between(low: number, high: number): number;
  /** Standard normal deviate (Box and Muller, one of the pair). */
  normal(): number;
  /** True with probability p. */
  happens(p: number): boolean;
  pick<T>(items: readonly [T, ...T[]]): T;
}

export function chance(seed: number): Chance {
  let state = (seed * 2654435761) >>> 0;
  const uniform = () => {
    state = (state + 0x9e3779b9) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 16), 0x21f0aaad);
    z = Math.imul(z ^ (z >>> 15), 0x735a2d97);
    return ((z ^ (z >>> 15)) >>> 0) / 4294967296;
  };
  return {
    uniform,
    between: (low, high) => low + (high - low) * uniform(),
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    happens: (p) => uniform() < p,
    pick: (items) => items[Math.floor(uniform() * items.length)] as (typeof items)[number],
  };
}
