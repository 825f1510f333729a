/** Seeded pseudo-random numbers, so that the same seed gives the same files on every machine. */

export type Random = {
  /** Uniform in [0, 1). */
  uniform(): number;
  /** Normal with mean 0 and standard deviation 1. */
  normal(): number;
};

/**
 * Returns a generator that is fully decided by its seed.
 * @param seed any number; taken modulo 2^32, so NaN and 0 are the same seed
 * Source: the mulberry32 mixing constants (public domain, from memory); Box–Muller for the normal values (from memory).
 */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return {
    uniform,
    // 1 - uniform lies in (0, 1], so the logarithm stays finite.
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
  };
}

/**
 * Returns a seed made from a name, so that adding one test to the demo leaves the noise of all others as it was.
 * Source: the FNV-1a offset and prime (public domain, from memory).
 */
export function seedFromName(name: string): number {
  let hash = 0x811c9dc5;
  for (const character of name) hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return hash;
}
