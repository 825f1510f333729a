/** Chargers side by side: fetches what is known of the chosen ones and lays it out. Without it the page says where else to compare. */
import { start } from "./page.tsx";

const place = document.querySelector<HTMLElement>("[data-side-by-side]");
if (place !== null) start(place);
