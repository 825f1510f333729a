/** What can hurt in this work. Common practice of the trade, in our own words; it defers to those who are responsible. */

export type CautionWords = { readonly name: string; readonly danger: string; readonly steps: readonly string[] };

export const cautions = {
  title: "Cautions",
  description: "Acid, hydrogen, short circuits, frozen and sealed batteries: what can hurt, and what is usually done about it.",
  lead: "The tests on this site were made by people who do this for a living. The notes below are common practice, not a permit: your local code, the sheet of the battery's maker, the manual of the charger and the judgement of a licensed person come first, always.",
  dangers: {
    acid: {
      name: "Acid",
      danger: "The electrolyte is sulphuric acid. It burns skin, can blind, and eats clothing, concrete and metal.",
      steps: [
        "Wear eye protection that closes at the sides, acid-resistant gloves and an apron; a hydrometer drips.",
        "Keep running water or an eye-wash within a few steps. Rinse a splash at once and for a long time, then see a doctor.",
        "Bind spilt acid with a product made for it or with soda, and dispose of it as your local rules say.",
        "Top up only with purified water, only after charging, never with acid.",
      ],
    },
    hydrogen: {
      name: "Hydrogen",
      danger:
        "A battery near full charge gives off hydrogen and oxygen. Air with 4 % of hydrogen in it can explode (IEC 62485-2, from memory).",
      steps: [
        "Charge where air moves; hydrogen rises and gathers under lids and ceilings.",
        "No flame, no smoking, no grinding. Switch the charger off at the mains before you touch a clamp: the spark comes at the clamp.",
        "A smell of rotten eggs means overcharge: switch off from a distance, air the room, stay away.",
      ],
    },
    "short-circuit": {
      name: "Short circuit",
      danger: "Even a tired battery drives hundreds of amperes through a spanner, enough to weld it, burn you or burst the case.",
      steps: [
        "Take rings and watches off. Use insulated tools. Cover the terminals that you do not work on.",
        "Disconnect the negative terminal of a vehicle first and connect it last, unless its handbook says otherwise.",
        "Fuse every test lead near the battery.",
      ],
    },
    frozen: {
      name: "Frozen batteries",
      danger: "A discharged battery freezes a few degrees below 0 °C. Charging ice can burst the case.",
      steps: [
        "Never charge a battery that may be frozen. Let it thaw slowly in a ventilated place first.",
        "A bulged or cracked case is the end: keep it upright in an acid-proof tray and hand it to a recycler.",
      ],
    },
    sealed: {
      name: "Sealed batteries",
      danger:
        "AGM and gel batteries cannot be refilled. Too high a voltage, or the wrong mode, dries them out and can heat them without end.",
      steps: [
        "Do not open them. No density can be read; voltage, current and temperature are all there is.",
        "Use only a mode that the battery's maker allows. Stop when the case grows hot, hisses or swells.",
      ],
    },
    mains: {
      name: "Mains",
      danger: "A charger is a mains appliance, often used in damp places.",
      steps: [
        "Use a residual-current device outdoors, on boats and in garages.",
        "Do not open a charger; leave repairs to a qualified person.",
      ],
    },
  } satisfies Record<string, CautionWords> as Readonly<Record<CautionId, CautionWords>>,
};

export type CautionId = "acid" | "hydrogen" | "short-circuit" | "frozen" | "sealed" | "mains";
