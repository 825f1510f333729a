/** A card for the shop counter, A6: six figures, their conditions, and the way to the evidence. */

import { chargerPath } from "../links.ts";
import { cardPath, typedAddress, wholeAddress } from "../outward/addresses.ts";
import { renderBarePage } from "../outward/bare-document.tsx";
import { HeadlineGroups } from "../outward/headline-list.tsx";
import { QrCode } from "../outward/qr-code.tsx";
import type { Quotable } from "../outward/quotation.ts";
import { ResultLine } from "../outward/result-line.tsx";
import { Warnings } from "../outward/warnings.tsx";
import { Mark } from "./mark.tsx";
import { Link, siteContext } from "./site-context.tsx";

/** Renders the card of a charger. */
export function renderCardPage(quotable: Quotable): string {
  const { index, charger, headlines, invented } = quotable;
  return renderBarePage(siteContext(index, cardPath(charger.id), invented), {
    title: `Card: ${charger.name}`,
    description: charger.verdict.sentence,
    kind: "card",
    insteadShow: chargerPath(charger.id),
    children: (
      <>
        <nav class="screen" aria-label="Away from the card">
          <Link to={chargerPath(charger.id)}>All results of this charger</Link>
          <span>Prints on A6 paper, at 100 %</span>
        </nav>
        <main class="sheet">
          <p class="site">{index.site.title}</p>
          <h1>{charger.name}</h1>
          <Warnings quotable={quotable} />
          <p class="verdict">
            <Mark kind={charger.verdict.weight}>{charger.verdict.sentence}</Mark>
          </p>
          <HeadlineGroups headlines={headlines} />
          <Foot quotable={quotable} />
        </main>
      </>
    ),
  });
}

function Foot({ quotable }: { quotable: Quotable }) {
  const { index, charger } = quotable;
  const address = index.site.baseUrl === null ? null : wholeAddress(index.site.baseUrl, chargerPath(charger.id));
  return (
    <footer class="foot">
      {address === null ? null : <QrCode address={address} />}
      <div>
        <p class="address">
          {address === null ? "This site does not state its address, so no code can lead to it." : <TypedAddress address={address} />}
        </p>
        <p class="small">
          <ResultLine quotable={quotable} />
        </p>
        <p class="small">
          Charging gives off hydrogen, and the acid burns: air, eye protection, no sparks, never a frozen battery. The battery maker's sheet
          and your local code hold.
        </p>
      </div>
    </footer>
  );
}

/** Breaks at slashes first, so that nobody wonders whether a hyphen at the end of a line belongs to it. */
function TypedAddress({ address }: { address: string }) {
  const steps = typedAddress(address).split(/(?<=\/)/);
  return (
    <strong>
      {steps.map((step, index) => (
        <span key={steps.slice(0, index + 1).join("")} class="step">
          {step}
        </span>
      ))}
    </strong>
  );
}
