/** How others may quote: the rules of the site, and for each charger its figures, its code for other pages, and its citations. */

import type { ComponentChildren } from "preact";
import type { Language } from "../../nouns/site.ts";
import { chargerPath } from "../links.ts";
import {
  cardPath,
  embedPath,
  quotePath,
  siteCitationPath,
  siteFeedPath,
  siteQuotePath,
  versionPlace,
  versionsPath,
  wholeAddress,
} from "../outward/addresses.ts";
import { bibtex, type Citable, plainCitation } from "../outward/citation.ts";
import { versionWords } from "../outward/history.ts";
import { frameCode, headlineWords, htmlBlock, type Quotable, quotationLine } from "../outward/quotation.ts";
import { standingNotice } from "../outward/standing.ts";
import type { SiteIndex } from "../results.ts";
import { renderPage } from "./document.tsx";
import { Link, MethodLink, siteContext, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";

/** Renders the rules, and the way to each charger's own page. `hasFeed` is false where no date is stated anywhere. */
export function renderQuotePage(index: SiteIndex, citable: Citable, hasFeed: boolean, language: Language): string {
  const context = siteContext(index, siteQuotePath, language);
  const { quote: words } = context.words.outward;
  return renderPage(context, {
    title: words.title,
    description: words.description,
    children: (
      <>
        <p class="lead">{words.lead}</p>
        <Rules index={index} />
        <h2 id="chargers">{words.chargers}</h2>
        {index.chargers.length === 0 ? <p>{words.noCharger}</p> : null}
        <ul>
          {index.chargers.map(({ id, name }) => (
            <li key={id}>
              {name}: <Link to={quotePath(id)}>{words.toCopy}</Link> · <Link to={cardPath(id)}>{words.toPrint}</Link> ·{" "}
              <Link to={versionsPath(id)}>{words.versions}</Link>
            </li>
          ))}
        </ul>
        <h2 id="cite">{words.citeSite}</h2>
        <Citations citable={citable} />
        <p>
          {words.toPrograms(<Link to={siteCitationPath}>CITATION.cff</Link>)}{" "}
          {hasFeed ? words.feed((feed) => <Link to={siteFeedPath}>{feed}</Link>) : words.noFeed}
        </p>
      </>
    ),
  });
}

function Rules({ index }: { index: SiteIndex }) {
  const { quote: words } = useSite().words.outward;
  const { rule } = words;
  return (
    <>
      <h2 id="rules">{words.rules}</h2>
      <ol>
        <Rule lead={rule.whole.lead}>{rule.whole.more}</Rule>
        <Rule lead={rule.verdict.lead}>{rule.verdict.more}</Rule>
        <Rule lead={rule.version.lead}>
          {rule.version.more(index.methodVersion, (methods) => (
            <Link to="method/">{methods}</Link>
          ))}
        </Rule>
        <Rule lead={rule.ended.lead}>{rule.ended.more}</Rule>
        <Rule lead={rule.endorsement.lead}>{rule.endorsement.more}</Rule>
        <Rule lead={rule.corrected.lead}>{rule.corrected.more(index.site.baseUrl !== null)}</Rule>
        {index.site.invented ? <Rule lead={rule.invented.lead}>{rule.invented.more}</Rule> : null}
      </ol>
      <p>{words.licence(index.site.licence)}</p>
    </>
  );
}

function Rule({ lead, children }: { lead: string; children: ComponentChildren }) {
  return (
    <li>
      <strong>{lead}</strong> {children}
    </li>
  );
}

/** Renders a charger's figures, code and citations, ready to copy. */
export function renderChargerQuotePage(quotable: Quotable, language: Language): string {
  const { index, charger, headlines, version, fingerprint, invented } = quotable;
  const context = siteContext(index, quotePath(charger.id), language, { invented });
  const { quote: words } = context.words.outward;
  const { speech } = quotable;
  const notice = standingNotice(charger, speech);
  return renderPage(context, {
    title: words.ofCharger(charger.name),
    description: words.ofChargerDescription(charger.name),
    children: (
      <>
        <p class="lead">
          {words.result(versionWords(version, speech), index.methodVersion, <code>{fingerprint}</code>)}{" "}
          <Link to={chargerPath(charger.id)}>{words.allResults}</Link> · <Link to={versionsPath(charger.id)}>{words.versionsLink}</Link> ·{" "}
          <Link to={siteQuotePath}>{words.rulesLink}</Link>
        </p>
        {notice === null ? null : (
          <p>
            <strong>{notice.words}</strong>
          </p>
        )}
        <h2 id="verdict">{words.verdict}</h2>
        <blockquote>
          <p>
            <Said text={charger.verdict.sentence} />
          </p>
          <ul data-pagefind-ignore>
            {[...headlines.promises, ...headlines.way].map((headline) => (
              <li key={headline.id}>{headlineWords(headline, speech)}</li>
            ))}
          </ul>
        </blockquote>
        <h2 id="figures">{words.figures}</h2>
        {[...headlines.promises, ...headlines.way].map((headline) => (
          <section key={headline.id} data-pagefind-ignore>
            <h3 id={`quote-${headline.id}`}>{headline.label}</h3>
            <blockquote>{quotationLine(headline, quotable)}</blockquote>
            <p class="quiet">
              <Link to={headline.path}>{words.evidence}</Link> · <MethodLink method={headline.id}>{words.method}</MethodLink>
            </p>
          </section>
        ))}
        <h2 id="embed">{words.inPage}</h2>
        <Codes quotable={quotable} />
        <h2 id="card">{words.onPaper}</h2>
        <p>
          <Link to={cardPath(charger.id)}>{words.counterCard}</Link>
        </p>
        <h2 id="cite">{words.citations}</h2>
        <Citations citable={citableCharger(quotable)} />
      </>
    ),
  });
}

function Codes({ quotable }: { quotable: Quotable }) {
  const { quote: words } = useSite().words.outward;
  const frame = frameCode(quotable);
  const block = htmlBlock(quotable);
  if (frame === null || block === null)
    return (
      <p>
        {words.noCode} <Link to={embedPath(quotable.charger.id)}>{words.wouldShow}</Link>
      </p>
    );
  return (
    <>
      <p>
        {words.frame((newest) => (
          <strong>{newest}</strong>
        ))}{" "}
        <Link to={embedPath(quotable.charger.id)}>{words.seeFrame}</Link>
      </p>
      <Code name={words.frameCode} text={frame} />
      <p>{words.block}</p>
      <Code name={words.blockCode} text={block} />
    </>
  );
}

function Citations({ citable }: { citable: Citable }) {
  return (
    <>
      <blockquote lang={useSite().language === "en" ? undefined : "en"}>{plainCitation(citable)}</blockquote>
      <Code name="BibTeX" text={bibtex(citable)} />
    </>
  );
}

/** Lines of code keep their breaks, so the region scrolls, and can be reached by keyboard. */
function Code({ name, text }: { name: string; text: string }) {
  return (
    <section aria-label={name} data-pagefind-ignore>
      <pre class="formula" tabindex={0}>
        <code>{text}</code>
      </pre>
    </section>
  );
}

function citableCharger({ index, charger, version, fingerprint, invented }: Quotable): Citable {
  return {
    key: `charger-${charger.id}`,
    title: `Results of the battery charger ${charger.name}`,
    site: index,
    version,
    fingerprint,
    address: index.site.baseUrl === null ? null : wholeAddress(index.site.baseUrl, versionPlace(charger.id, version)),
    invented,
  };
}
