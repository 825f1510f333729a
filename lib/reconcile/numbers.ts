/** Standard normal numbers that are the same on every call and every machine: no chance enters the results. */

export type Numbers = { readonly uniform: () => number; readonly normal: () => number };

/**
 * A stream of numbers that is fully decided by its seed.
 * @returns uniform in (0, 1), and normal with mean 0 and standard deviation 1
 * Source: mulberry32's mixing (public domain, from memory), Box and Muller's transform.
 */
export function startNumbers(seed: number): Numbers {
  let state = seed >>> 0;
  let spare = Number.NaN;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 4_294_967_296;
  };
  const normal = (): number => {
    if (!Number.isNaN(spare)) {
      const kept = spare;
      spare = Number.NaN;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return { uniform, normal };
}
