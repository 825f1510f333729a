/** The page that lays chargers side by side, as far as it stands without its script. */
import type { Wrap } from "../slot.ts";

export const sidePage = {
  title: "Side by side",
  description: "Two to four chargers next to each other: profiles, figures with their intervals, claims, and what was not seen of each.",
  lead: "Two to four chargers next to each other. Differences are named only where they are larger than the uncertainty, and figures from batteries that were not alike are not held against each other.",
  caution: (cautions: Wrap) => (
    <>
      A battery on charge gives off gas that can explode. Before one stays connected, read the {cautions("cautions")}; the makers of battery
      and charger and the rules where you are come first.
    </>
  ),
  read: "How to read it",
  readDrawing:
    "A ring marks where a recording ends, which is not where the charger was done; a filled dot, where the charger had switched off by then. Where the batteries are of several voltages, voltage is drawn for one cell.",
  readShare: "Over the charge put in, a profile adds up the current between its drawn points; gaps add nothing.",
  readSigns:
    "≠ the intervals do not overlap, so the figures differ. ≈ they overlap: cannot be told apart by these measurements. = the very same. ∦ not comparable. A figure leads to its evidence. What each was tested on stands in the first table; how flat each battery was, and how warm, on the page of its test.",
  readDraws:
    "Who is done first is projected, nobody saw these charges. It is told by draws: in each, all chargers meet the very same battery. A draw in which both take equally long, or neither comes to an end, counts half. One is said to be before another only where it is so in more than 95 % of the draws.",
  readPaying:
    "What pays off is told by price and by the energy of the reference charge at the site's price, draw by draw as well: a range holds the middle 95 % of the draws. How long a charger lives, and what a better kept battery is worth, is not in it.",
  other: "Other ways to compare",
  otherNote: (comparison: Wrap, csv: Wrap) => (
    <>
      Laying chargers side by side needs scripts, and a page that comes from a web server. Everything shown here also stands in the{" "}
      {comparison("comparison of all chargers")}, in {csv("its CSV file")}, and on each charger's page:
    </>
  ),
  noCharger: "No charger has been published yet.",
};
