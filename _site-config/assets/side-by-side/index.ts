/** Chargers side by side: fetches what is known of the chosen ones and lays it out. Without it the page says where else to compare. */
import { start } from "./page.tsx";
import { place } from "./speech.ts";

if (place !== null) start(place);
