import { describe, expect, it } from "vitest";
import { type Buyable, breakEvenStatements } from "../../../lib/publish/side-by-side/break-even.ts";
import { figureBetween } from "./side-by-side-samples.ts";
import { english, sideSpeech } from "./side-speech-samples.ts";

const priced = (value: number | null) => figureBetween(null, null, { id: "price", value, basis: "stated", unit: "EUR", heldOn: [] });

/** kWh a draw; null for a draw in which the battery is not filled. A kWh is 0.50 in the currency. */
function buyable(name: string, price: number | null, drawsKWh: readonly (number | null)[], currency = "EUR"): Buyable {
  return {
    name,
    price: priced(price),
    reference: {
      words: "a battery",
      drawsH: drawsKWh.map((kWh) => (kWh === null ? null : 10)),
      drawsKWh,
      pricePerKWh: { amount: 0.5, currency },
    },
  };
}

const told = (...buyables: Buyable[]): string[] =>
  breakEvenStatements(buyables, english).map(({ sign, words }) => `${sign} ${words}`.replaceAll(/[\u202f\u00a0]/g, " "));
const forty = (kWh: number): number[] => Array.from({ length: 40 }, () => kWh);

describe("what pays off", () => {
  it("is 50 EUR more over 0.5 kWh at 0.50 EUR saved a charge: 200 charges, and 100 where twice is saved, by hand", () => {
    const saves = [...forty(0.5).slice(0, 20), ...forty(1).slice(0, 20)];
    expect(told(buyable("B", 30, forty(1.5)), buyable("A", 80, saves))).toEqual([
      "≠ A costs 50.00 EUR more to buy than B, and has earned that back by the energy it saves after 100 to 200 charges",
    ]);
  });

  it("does not come where nothing is saved, and is not told where it is in some draws", () => {
    expect(told(buyable("A", 80, forty(1.5)), buyable("B", 30, forty(1.5)))).toEqual([
      "≠ A costs 50.00 EUR more to buy than B, and the energy it saves does not earn that back",
    ]);
    const some = [...forty(1).slice(0, 10), ...forty(2).slice(0, 30)];
    expect(told(buyable("A", 80, some), buyable("B", 30, forty(1.5)))).toEqual([
      "≈ A costs 50.00 EUR more to buy than B; whether the energy it saves earns that back cannot be told: in 10 of 40 draws it does, after 200 charges at best",
    ]);
  });

  it("takes a charger that stops short for no cheap one: those draws do not count, and half of them are too many", () => {
    const half = [...forty(0.5).slice(0, 19), ...Array.from({ length: 21 }, () => null)];
    expect(told(buyable("A", 80, half), buyable("B", 30, forty(1.5)))).toEqual([
      "∦ A is not comparable because it leaves the reference battery short in half of the draws or more",
    ]);
    expect(told(buyable("A", 80, [...forty(0.5).slice(0, 39), null]), buyable("B", 30, forty(1)))).toEqual([
      "≠ A costs 50.00 EUR more to buy than B, and has earned that back by the energy it saves after 200 to 200 charges; counted are the 39 of 40 draws in which both fill the battery",
    ]);
  });

  it("is open above where some draws never earn it back: no draw that does can close it", () => {
    const oneNever = [...forty(0.5).slice(0, 39), 1.5];
    expect(told(buyable("A", 80, oneNever), buyable("B", 30, forty(1.5)))).toEqual([
      "≠ A costs 50.00 EUR more to buy than B, and has earned that back by the energy it saves after 100 charges or more, in 1 of 40 draws never",
    ]);
  });

  it("says nothing of two that never fill the battery in the same draw, rather than that it is earned back after no charge", () => {
    const [first, second] = [forty(1).map((kWh, draw) => (draw < 20 ? kWh : null)), forty(1).map((kWh, draw) => (draw < 20 ? null : kWh))];
    expect(told(buyable("A", 80, first), buyable("B", 30, second))).toEqual([
      "∦ A is not comparable because it leaves the reference battery short in half of the draws or more",
    ]);
  });

  it("says in words who costs the same, who states no price, and who cannot be held against another's money", () => {
    const plain = buyable("B", 30, forty(1));
    expect(told(buyable("A", 30, forty(0.5)), plain)).toEqual(["= A and B cost the same to buy"]);
    expect(told(buyable("A", null, forty(0.5)), plain)).toEqual(["∦ A is not comparable because no price of it is stated"]);
    expect(told(buyable("A", 40, forty(0.5), "SEK"), plain)).toEqual(["∦ A and B: prices are in SEK and EUR"]);
    expect(told({ ...plain, name: "A", reference: { because: "the mode is for 6 V" } }, plain)).toEqual([
      "∦ A is not comparable because the mode is for 6 V",
    ]);
  });

  it("is told in the page's language, money with its comma and charges in the form of their count", () => {
    const saves = [...forty(0.5).slice(0, 20), ...forty(1).slice(0, 20)];
    const toldIn = (language: "pl" | "de", ...buyables: Buyable[]) =>
      breakEvenStatements(buyables, sideSpeech(language)).map(({ words }) => words.replaceAll(/[\u202f\u00a0]/g, " "));
    const pair = [buyable("B", 30, forty(1.5)), buyable("A", 80, saves)];
    expect(toldIn("de", ...pair)).toEqual([
      "A kostet beim Kauf 50,00 EUR mehr als B und hat das durch die gesparte Energie nach 100 bis 200 Ladungen wieder eingebracht",
    ]);
    expect(toldIn("pl", ...pair)).toEqual([
      "A kosztuje przy zakupie o 50,00 EUR więcej niż B, co zaoszczędzona energia zwraca po 100 do 200 ładowaniach",
    ]);
    const atOnce = [buyable("B", 30, forty(1.5)), buyable("A", 30.5, forty(0.5))];
    expect(toldIn("de", ...atOnce)[0]).toContain("nach 1 bis 1 Ladung wieder");
    expect(toldIn("pl", ...atOnce)[0]).toContain("po 1 do 1 ładowaniu");
  });
});
