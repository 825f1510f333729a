export type Random = { below(limit: number): number };

/**
 * Whole numbers from a seed and a number of input, the same on every machine: input 70,000 can be made without the 69,999 before it.
 * Source: the splitmix32 mixing steps, from memory; nothing rests on their quality.
 */
export function seededRandom(seed: number, input: number): Random {
  let state = (Math.imul(seed, 0x9e3779b1) ^ Math.imul(input + 1, 0x85ebca6b)) >>> 0;
  const next = (): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad);
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97);
    return (mixed ^ (mixed >>> 15)) >>> 0;
  };
  return { below: (limit) => (limit <= 0 ? 0 : next() % limit) };
}
