/** Offers the log explorer, and fetches it when it is asked for. Without scripts the raw file is there to be read. */
import { exploreButtonWords as words } from "./script-words.ts";

let loading: Promise<void> | undefined;

function load(address: string): Promise<void> {
  loading ??= new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", () => reject(new Error(words.notFetched)));
    document.head.append(script);
  });
  return loading;
}

for (const place of document.querySelectorAll<HTMLElement>("[data-explore]")) {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = words.every(place.dataset.name ?? words.thisLog);
  button.addEventListener("click", () => {
    button.disabled = true;
    load(place.dataset.script ?? "").then(
      () =>
        dispatchEvent(
          new CustomEvent("ampwitness-explore", { detail: { place, folder: place.dataset.explore ?? "", name: place.dataset.name ?? "" } }),
        ),
      (error: unknown) => {
        place.textContent = String(error);
      },
    );
  });
  place.append(button);
  place.hidden = false;
}
