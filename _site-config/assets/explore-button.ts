/** Offers the log explorer, and fetches it when it is asked for. Without scripts the raw file is there to be read. */

let loading: Promise<void> | undefined;

function load(address: string): Promise<void> {
  loading ??= new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.addEventListener("load", () => resolve());
    script.addEventListener("error", () => reject(new Error("the explorer's script could not be fetched")));
    document.head.append(script);
  });
  return loading;
}

for (const place of document.querySelectorAll<HTMLElement>("[data-explore]")) {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = `Explore every row of ${place.dataset.name ?? "this log"}`;
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

export {};
