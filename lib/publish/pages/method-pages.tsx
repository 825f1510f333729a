/** How everything is measured and judged: one overview, and one page for each figure, finding, claim or rule. */
import type { Language } from "../../nouns/site.ts";
import { methodPath } from "../links.ts";
import type { MethodEntry, SiteIndex } from "../results.ts";
import { renderPage } from "./document.tsx";
import { Link, siteContext, useSite } from "./site-context.tsx";
import { Said, said } from "./speech.tsx";
import { Columns, Table } from "./table.tsx";

/** In the order of the page; the id of each section is its English name, whatever the page's language. */
const kinds = { figure: "figures", finding: "findings", claim: "claims", rule: "rules" } as const;
const kindIds = ["figure", "finding", "claim", "rule"] as const;

/** The ids of the method pages, each once: a figure of a recording and of a test can share an id and then share a page. */
export function methodIds(index: SiteIndex): string[] {
  return [...new Set(index.methods.map((entry) => entry.id))];
}

/** Renders the overview with the table of rules. */
export function renderMethodPage(index: SiteIndex, language: Language): string {
  const context = siteContext(index, "method/", language);
  const { method: words } = context.words.reference;
  return renderPage(context, {
    title: words.title,
    description: words.description,
    children: (
      <>
        <p class="lead">{words.lead(index.methodVersion, index.toolVersion)}</p>
        {kindIds.map((kind) => (
          <MethodList key={kind} id={kinds[kind]} name={words.kinds[kind]} entries={index.methods.filter((entry) => entry.kind === kind)} />
        ))}
        <h2 id="rules-in-force">{words.rules}</h2>
        <p>{words.rulesLead}</p>
        <RulesTable rules={index.rules} />
        <h2 id="intervals">{words.intervals}</h2>
        <p>{words.intervalsNote}</p>
      </>
    ),
  });
}

function MethodList({ id, name, entries }: { id: string; name: string; entries: readonly MethodEntry[] }) {
  if (entries.length === 0) return null;
  const once = entries.filter((entry, index) => entries.findIndex((other) => other.id === entry.id) === index);
  return (
    <>
      <h2 id={id}>{name}</h2>
      <ul class="columns">
        {once.map((entry) => (
          <li key={entry.id}>
            <Link to={methodPath(entry.id)}>
              <Said text={entry.label} />
            </Link>
            {entry.unit === "" ? "" : ", "}
            <Unit unit={entry.unit} />
          </li>
        ))}
      </ul>
    </>
  );
}

function RulesTable({ rules }: { rules: SiteIndex["rules"] }) {
  const { method: words } = useSite().words.reference;
  const { columns } = words;
  if (rules.length === 0) return <p>{words.noRules}</p>;
  return (
    <Table caption={words.rulesCaption} class="cards labelled">
      <Columns names={[columns.rule, columns.value, columns.setBy, columns.source]} />
      <tbody>
        {rules.map((rule) => (
          <tr key={rule.id} id={`rule-${rule.id}`}>
            <th scope="row">
              <Said text={rule.label} />
            </th>
            <td class="words">
              <Said text={rule.value} />
            </td>
            <td>{rule.setBy === "this site" ? <strong>{words.thisSite}</strong> : words.byDefault}</td>
            <td class="words">
              <Said text={rule.source} />
            </td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

/** Renders the page of one method. */
export function renderMethodEntryPage(index: SiteIndex, id: string, language: Language): string {
  const entries = index.methods.filter((entry) => entry.id === id);
  const title = entries[0]?.label ?? id;
  const context = siteContext(index, methodPath(id), language);
  return renderPage(context, {
    title: said(context, title),
    description: said(context, entries[0]?.explain ?? title),
    children: (
      <>
        {entries.map((entry) => (
          <Entry key={`${entry.kind} ${entry.method}`} entry={entry} alone={entries.length === 1} />
        ))}
        <p>
          <Link to="method/">{context.words.reference.method.all}</Link>
        </p>
      </>
    ),
  });
}

function Entry({ entry, alone }: { entry: MethodEntry; alone: boolean }) {
  const { method: words } = useSite().words.reference;
  const { facts } = words;
  return (
    <section>
      {alone ? null : (
        <h2>
          <Said text={entry.label} /> ({words.kind[entry.kind]})
        </h2>
      )}
      <p class="lead">
        <Said text={entry.explain} />
      </p>
      {entry.formula === null ? null : (
        <pre class="formula" lang={useSite().language === "en" ? undefined : "en"}>
          {entry.formula}
        </pre>
      )}
      <dl class="facts">
        <div>
          <dt>{facts.kind}</dt>
          <dd>{words.kind[entry.kind]}</dd>
        </div>
        <div>
          <dt>{facts.unit}</dt>
          <dd>{entry.unit === "" ? words.noUnit : <Unit unit={entry.unit} />}</dd>
        </div>
        <div>
          <dt>{facts.version}</dt>
          <dd>
            <code>{entry.method}</code>
          </dd>
        </div>
        <div>
          <dt>{facts.source}</dt>
          <dd>
            <Said text={entry.source} />
          </dd>
        </div>
        <div>
          <dt>{facts.checked}</dt>
          <dd>
            {entry.checkedBy.length === 0 ? words.notChecked : null}
            <ul class="plain">
              {entry.checkedBy.map((check) => (
                <li key={check}>
                  <Said text={check} />
                </li>
              ))}
            </ul>
          </dd>
        </div>
      </dl>
    </section>
  );
}

/** A unit's symbol is the same everywhere; a unit that depends on the record is told in words, which the vocabulary knows. */
function Unit({ unit }: { unit: string }) {
  return <>{said(useSite(), unit)}</>;
}
