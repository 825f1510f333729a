/** A card for the shop counter, A6: six figures, their conditions, and the way to the evidence. */

import type { Language } from "../../nouns/site.ts";
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
import { Said, said } from "./speech.tsx";

/** Renders the card of a charger. */
export function renderCardPage(quotable: Quotable, language: Language): string {
  const { index, charger, headlines, invented } = quotable;
  const context = siteContext(index, cardPath(charger.id), language, { invented });
  const { card: words } = context.words.outward;
  return renderBarePage(context, {
    title: words.title(charger.name),
    description: said(context, charger.verdict.sentence),
    kind: "card",
    insteadShow: chargerPath(charger.id),
    children: (
      <>
        <nav class="screen" aria-label={words.away}>
          <Link to={chargerPath(charger.id)}>{words.results}</Link>
          <span>{words.prints}</span>
        </nav>
        <main class="sheet">
          <p class="site">{index.site.title}</p>
          <h1>{charger.name}</h1>
          <Warnings quotable={quotable} />
          <p class="verdict">
            <Mark kind={charger.verdict.weight}>
              <Said text={charger.verdict.sentence} />
            </Mark>
          </p>
          <HeadlineGroups headlines={headlines} />
          <Foot quotable={quotable} />
        </main>
      </>
    ),
  });
}

function Foot({ quotable }: { quotable: Quotable }) {
  const { index, charger, speech, folder } = quotable;
  const { card: words } = speech.outward;
  const address = index.site.baseUrl === null ? null : wholeAddress(index.site.baseUrl, folder + chargerPath(charger.id));
  return (
    <footer class="foot">
      {address === null ? null : <QrCode address={address} words={words.qrCode(address)} />}
      <div>
        <p class="address">{address === null ? words.noAddress : <TypedAddress address={address} />}</p>
        <p class="small">
          <ResultLine quotable={quotable} />
        </p>
        <p class="small">{words.caution}</p>
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
