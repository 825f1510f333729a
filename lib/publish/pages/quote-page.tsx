/** How others may quote: the rules of the site, and for each charger its figures, its code for other pages, and its citations. */
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
import { Link, MethodLink, siteContext } from "./site-context.tsx";

/** Renders the rules, and the way to each charger's own page. `hasFeed` is false where no date is stated anywhere. */
export function renderQuotePage(index: SiteIndex, citable: Citable, hasFeed: boolean): string {
  return renderPage(siteContext(index, siteQuotePath), {
    title: "How to quote these results",
    description: "What belongs to a quoted figure, what must not be left out, and text, code and citations to copy.",
    children: (
      <>
        <p class="lead">Anybody may quote these results, a shop and a maker too. A figure is worth as much as what stands beside it.</p>
        <Rules index={index} />
        <h2 id="chargers">Figures, cards and code for each charger</h2>
        {index.chargers.length === 0 ? <p>No charger has been published yet.</p> : null}
        <ul>
          {index.chargers.map(({ id, name }) => (
            <li key={id}>
              {name}: <Link to={quotePath(id)}>figures and code to copy</Link> · <Link to={cardPath(id)}>card to print</Link> ·{" "}
              <Link to={versionsPath(id)}>versions</Link>
            </li>
          ))}
        </ul>
        <h2 id="cite">To cite the whole site</h2>
        <Citations citable={citable} />
        <p>
          <Link to={siteCitationPath}>CITATION.cff</Link> says the same to programs.{" "}
          {hasFeed ? (
            <>
              <Link to={siteFeedPath}>The Atom feed</Link> tells of every result, revision and correction.
            </>
          ) : (
            "There is no feed: a feed needs the site's address and dated results, and the records do not state both."
          )}
        </p>
      </>
    ),
  });
}

function Rules({ index }: { index: SiteIndex }) {
  return (
    <>
      <h2 id="rules">Rules</h2>
      <ol>
        <li>
          <strong>A figure goes with its unit, its interval, its condition, its date, its id and a link.</strong> The lines on each
          charger's page have all six.
        </li>
        <li>
          <strong>No verdict is cropped.</strong> What cannot be told, what was not put to the test and what speaks against the charger
          belong to it as much as the rest.
        </li>
        <li>
          <strong>Figures are compared only within one method version.</strong> This is version {index.methodVersion};{" "}
          <Link to="method/">what each method does</Link>. Conditions that differ, such as battery or temperature, are named.
        </li>
        <li>
          <strong>“The recording ended” is not “the charger finished”.</strong> Nor is “not recorded” the same as zero.
        </li>
        <li>
          <strong>A quotation is no endorsement.</strong> There is no seal and no score, and none may be made from these results.
        </li>
        <li>
          <strong>A corrected result is corrected wherever it is quoted.</strong> The embed does so by itself; for text and code, look at
          the page of versions now and then{index.site.baseUrl === null ? "." : " or follow its feed."}
        </li>
        {index.site.invented ? (
          <li>
            <strong>These data are invented.</strong> They may be quoted to show how the site works, never as results of a product.
          </li>
        ) : null}
      </ol>
      <p>Licence of data and words: {index.site.licence ?? "not stated; ask the publisher"}.</p>
    </>
  );
}

/** Renders a charger's figures, code and citations, ready to copy. */
export function renderChargerQuotePage(quotable: Quotable): string {
  const { index, charger, headlines, version, fingerprint, invented } = quotable;
  const context = siteContext(index, quotePath(charger.id), invented);
  const notice = standingNotice(charger);
  return renderPage(context, {
    title: `Quote: ${charger.name}`,
    description: `Figures of ${charger.name} with unit, condition, date, id and link, and code for other pages.`,
    children: (
      <>
        <p class="lead">
          Result {versionWords(version)}, method version {index.methodVersion}, fingerprint <code>{fingerprint}</code>.{" "}
          <Link to={chargerPath(charger.id)}>All results</Link> · <Link to={versionsPath(charger.id)}>Versions</Link> ·{" "}
          <Link to={siteQuotePath}>Rules for quoting</Link>
        </p>
        {notice === null ? null : (
          <p>
            <strong>{notice.words}</strong>
          </p>
        )}
        <h2 id="verdict">The verdict, whole</h2>
        <blockquote>
          <p>{charger.verdict.sentence}</p>
          <ul data-pagefind-ignore>
            {[...headlines.promises, ...headlines.way].map((headline) => (
              <li key={headline.id}>{headlineWords(headline)}</li>
            ))}
          </ul>
        </blockquote>
        <h2 id="figures">Single figures</h2>
        {[...headlines.promises, ...headlines.way].map((headline) => (
          <section key={headline.id} data-pagefind-ignore>
            <h3 id={`quote-${headline.id}`}>{headline.label}</h3>
            <blockquote>{quotationLine(headline, quotable)}</blockquote>
            <p class="quiet">
              <Link to={headline.path}>Evidence</Link> · <MethodLink method={headline.id}>Method</MethodLink>
            </p>
          </section>
        ))}
        <h2 id="embed">In another page</h2>
        <Codes quotable={quotable} />
        <h2 id="card">On paper</h2>
        <p>
          <Link to={cardPath(charger.id)}>Card for the counter, A6</Link>
        </p>
        <h2 id="cite">Citations</h2>
        <Citations citable={citableCharger(quotable)} />
      </>
    ),
  });
}

function Codes({ quotable }: { quotable: Quotable }) {
  const frame = frameCode(quotable);
  const block = htmlBlock(quotable);
  if (frame === null || block === null)
    return (
      <p>
        This site does not state its address, so there is no code that would work elsewhere.{" "}
        <Link to={embedPath(quotable.charger.id)}>The page that it would show</Link>
      </p>
    );
  return (
    <>
      <p>
        A frame always shows the <strong>newest</strong> result. It runs no script, sets no cookie and asks nobody else for anything.{" "}
        <Link to={embedPath(quotable.charger.id)}>See what it shows</Link>
      </p>
      <Code name="Code of the frame" text={frame} />
      <p>
        A block of text stays as it is on the day it was copied, so it says which version it quotes and links to the page that tells whether
        there is a newer one. Please copy it whole.
      </p>
      <Code name="Code of the block" text={block} />
    </>
  );
}

function Citations({ citable }: { citable: Citable }) {
  return (
    <>
      <blockquote>{plainCitation(citable)}</blockquote>
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
