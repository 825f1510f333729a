/** How everything is measured and judged: one overview, and one page for each figure, finding, claim or rule. */
import { methodPath } from "../links.ts";
import type { MethodEntry, SiteIndex } from "../results.ts";
import { renderPage } from "./document.tsx";
import { Link, siteContext } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

const kinds = { figure: "Figures", finding: "Findings", claim: "Claims", rule: "Rules" } as const;

/** The ids of the method pages, each once: a figure of a recording and of a test can share an id and then share a page. */
export function methodIds(index: SiteIndex): string[] {
  return [...new Set(index.methods.map((entry) => entry.id))];
}

/** Renders the overview with the table of rules. */
export function renderMethodPage(index: SiteIndex): string {
  return renderPage(siteContext(index, "method/"), {
    title: "Method",
    description: "How each figure is computed, how each claim is judged, and which rules hold on this site.",
    children: (
      <>
        <p class="lead">
          Raw logs and readings go in; figures are computed from them; findings are judged from the figures; pages show the result. Nothing
          is typed in by hand on the way. This is method version {index.methodVersion}, computed by version {index.toolVersion} of the tool.
        </p>
        {Object.entries(kinds).map(([kind, name]) => (
          <MethodList key={kind} name={name} entries={index.methods.filter((entry) => entry.kind === kind)} />
        ))}
        <h2 id="rules-in-force">Rules and constants</h2>
        <p>Each is the project's default or was set by this site; either way it was set before the claims were judged.</p>
        <RulesTable rules={index.rules} />
        <h2 id="intervals">Intervals</h2>
        <p>
          A value such as 5.84 ± 0.12 A comes with an interval that holds the true value with 95 % probability, worked out from the
          instrument's accuracy, its resolution and the sampling. The interval is written with two digits and the value to the same place
          (JCGM 100:2008, 7.2.6). Where the interval is wider on one side its two ends are written out. Where none can be defended, none is
          shown.
        </p>
      </>
    ),
  });
}

function MethodList({ name, entries }: { name: string; entries: readonly MethodEntry[] }) {
  if (entries.length === 0) return null;
  const once = entries.filter((entry, index) => entries.findIndex((other) => other.id === entry.id) === index);
  return (
    <>
      <h2 id={name.toLowerCase()}>{name}</h2>
      <ul class="columns">
        {once.map((entry) => (
          <li key={entry.id}>
            <Link to={methodPath(entry.id)}>{entry.label}</Link>
            {entry.unit === "" ? "" : `, ${entry.unit}`}
          </li>
        ))}
      </ul>
    </>
  );
}

function RulesTable({ rules }: { rules: SiteIndex["rules"] }) {
  if (rules.length === 0) return <p>No rules are listed.</p>;
  return (
    <Table caption="Rules that hold on this site" class="cards labelled">
      <Columns names={["Rule", "Value", "Set by", "Source"]} />
      <tbody>
        {rules.map((rule) => (
          <tr key={rule.id} id={`rule-${rule.id}`}>
            <th scope="row">{rule.label}</th>
            <td class="words">{rule.value}</td>
            <td>{rule.setBy === "this site" ? <strong>this site</strong> : "default"}</td>
            <td class="words">{rule.source}</td>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

/** Renders the page of one method. */
export function renderMethodEntryPage(index: SiteIndex, id: string): string {
  const entries = index.methods.filter((entry) => entry.id === id);
  const title = entries[0]?.label ?? id;
  return renderPage(siteContext(index, methodPath(id)), {
    title,
    description: entries[0]?.explain ?? title,
    children: (
      <>
        {entries.map((entry) => (
          <Entry key={`${entry.kind} ${entry.method}`} entry={entry} alone={entries.length === 1} />
        ))}
        <p>
          <Link to="method/">All methods and rules</Link>
        </p>
      </>
    ),
  });
}

function Entry({ entry, alone }: { entry: MethodEntry; alone: boolean }) {
  return (
    <section>
      {alone ? null : (
        <h2>
          {entry.label} ({entry.kind})
        </h2>
      )}
      <p class="lead">{entry.explain}</p>
      {entry.formula === null ? null : <pre class="formula">{entry.formula}</pre>}
      <dl class="facts">
        <div>
          <dt>Kind</dt>
          <dd>{entry.kind}</dd>
        </div>
        <div>
          <dt>Unit</dt>
          <dd>{entry.unit === "" ? "none" : entry.unit}</dd>
        </div>
        <div>
          <dt>Method and version</dt>
          <dd>
            <code>{entry.method}</code>
          </dd>
        </div>
        <div>
          <dt>Source</dt>
          <dd>{entry.source}</dd>
        </div>
        <div>
          <dt>Checked against</dt>
          <dd>
            {entry.checkedBy.length === 0 ? "no outside source yet" : null}
            <ul class="plain">
              {entry.checkedBy.map((check) => (
                <li key={check}>{check}</li>
              ))}
            </ul>
          </dd>
        </div>
      </dl>
    </section>
  );
}
